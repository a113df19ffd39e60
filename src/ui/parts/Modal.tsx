import { type ReactNode, useEffect, useId, useRef } from 'react';
import { texts } from '../../texts/speech';

interface Props {
  readonly title: string;
  readonly onClose: () => void;
  /** Written on the button that closes it; "Done" where left out. */
  readonly closeWord?: string;
  /** What the window is for, when that is more than reading; written on a button beside the one that closes it. */
  readonly action?: { readonly word: string; readonly run: () => void };
  readonly children: ReactNode;
}

/** A window over the page; Escape, the button below or a tap beside it closes it. */
export function Modal({ title, onClose, closeWord = texts().page.done, action, children }: Props) {
  const ref = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    ref.current?.showModal();
  }, []);
  return (
    <dialog
      ref={ref}
      className="modal"
      aria-labelledby={titleId}
      onClose={onClose}
      onClick={(event) => event.target === ref.current && ref.current?.close()}
      onKeyDown={(event) => event.stopPropagation()}
    >
      <div className="modal-body">
        <h2 id={titleId}>{title}</h2>
        {children}
      </div>
      <div className="modal-close">
        <button
          type="button"
          className={action ? 'button' : 'button button-strong'}
          onClick={() => ref.current?.close()}
        >
          {closeWord}
        </button>
        {action && (
          <button type="button" className="button button-strong" onClick={action.run}>
            {action.word}
          </button>
        )}
      </div>
    </dialog>
  );
}
