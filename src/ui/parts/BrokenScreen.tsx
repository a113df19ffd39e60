import { Component, type ReactNode } from 'react';
import { texts } from '../../texts/speech';

interface Props {
  readonly children: ReactNode;
  /** Where the person is: at another place it is tried anew. */
  readonly place: string;
}

/** Says that a screen broke, and what to do, where React would leave an empty page. */
export class BrokenScreen extends Component<Props, { readonly broken: Error | null; readonly at: string }> {
  override state: { readonly broken: Error | null; readonly at: string } = {
    broken: null,
    at: this.props.place,
  };

  static getDerivedStateFromError(error: unknown) {
    return { broken: error instanceof Error ? error : new Error(String(error)) };
  }

  static getDerivedStateFromProps({ place }: Props, { at }: { at: string }) {
    return place === at ? null : { broken: null, at: place };
  }

  override render() {
    const { broken }: { broken: Error | null } = this.state;
    if (broken === null) return this.props.children;
    const words = texts().page.broken;
    return (
      <div className="note-trouble" role="alert">
        <p>{words.said(broken.message)}</p>
        <button type="button" className="button button-strong" onClick={() => location.reload()}>
          {words.again}
        </button>
      </div>
    );
  }
}
