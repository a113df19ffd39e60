import { dayToday } from '../../state/dayToday';
import { texts } from '../../texts/speech';
import { useAtStake } from './useAtStake';
import { useSaid } from './useSaid';
import { useSaveJournal } from './useSaveJournal';

/** Asks to save the journal to a file once much of it lies in this browser alone. */
export function SaveNote() {
  const stake = useAtStake();
  const { said, busy, attempt } = useSaid();
  const save = useSaveJournal(attempt);
  const words = texts().journal;
  // What was said last stands after all of it is saved.
  if (stake?.sinceMs == null || (stake.level !== 'much' && stake.level !== 'most'))
    return said && <p role="status">{said()}</p>;
  return (
    <aside className="save-note" data-level={stake.level} aria-label={words.stake.title}>
      <p>{words.stake[stake.level](stake.photos, dayToday(new Date(stake.sinceMs)))}</p>
      <button
        type="button"
        className={stake.level === 'most' ? 'button button-strong' : 'button'}
        disabled={busy}
        onClick={save}
      >
        {words.inAndOut.save}
      </button>
      {said !== null && <p role="status">{said()}</p>}
    </aside>
  );
}
