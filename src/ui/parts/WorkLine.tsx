import { useId } from 'react';
import { texts } from '../../texts/speech';

interface Props {
  /** What is being done. */
  readonly words: string;
  /** How much of it is done, 0 to 1. */
  readonly share: number;
  /** Name of the bar; without one it is "done so far". */
  readonly name?: string;
  /** True once it was cancelled and has not yet stopped. */
  readonly isStopping?: boolean;
  /** True where what is around it is announced as it comes, as by `WorkLines`. */
  readonly isAnnounced?: boolean;
  /** Null where there is nothing to cancel yet. */
  readonly onCancel: (() => void) | null;
}

/** What is being done, how far it is, and a way to stop it: for everything that can take longer than a second. */
export function WorkLine({ words, share, name, isStopping = false, isAnnounced = false, onCancel }: Props) {
  const said = useId();
  const { work } = texts();
  return (
    <div className="work-line">
      <p role={isAnnounced ? undefined : 'status'} id={said}>
        {isStopping ? work.stopping : words}
      </p>
      <progress value={share} aria-label={name ?? work.soFar} aria-describedby={said} />
      {onCancel !== null && (
        <button
          type="button"
          className="button"
          aria-describedby={said}
          disabled={isStopping}
          onClick={onCancel}
        >
          {work.cancel}
        </button>
      )}
    </div>
  );
}
