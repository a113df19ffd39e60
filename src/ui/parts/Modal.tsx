import { type ReactNode, useEffect, useId, useRef } from 'react';

interface Props {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** A window over the page; Escape, the button below or a tap beside it closes it. */
export function Modal({ title, onClose, children }: Props) {
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
      <button type="button" className="button button-strong modal-close" onClick={() => ref.current?.close()}>
        Done
      </button>
    </dialog>
  );
}
