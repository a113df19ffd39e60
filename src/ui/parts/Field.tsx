import { type ReactNode, useId } from 'react';

interface Props {
  readonly label: string;
  /** The control, under the id that the label names. */
  readonly children: (id: string) => ReactNode;
}

/** A control under its label. */
export function Field({ label, children }: Props) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {children(id)}
    </div>
  );
}
