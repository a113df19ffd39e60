import { Link } from 'wouter';
import { STEP_WORDS } from '../setup/stepWords';
import { useJournal } from '../stores';
import { ActionCounts } from './ActionCounts';
import { InAndOut } from './InAndOut';
import { Machines } from './Machines';
import { StorageNote } from './StorageNote';
import { Thumbnail } from './Thumbnail';

/** Every batch, the one checked last first, and what belongs to all of them. */
export function JournalScreen() {
  const { status, batches, trouble } = useJournal((state) => state);
  return (
    <div className="journal">
      <div className="journal-path">
        <h2>Journal</h2>
        {batches.length > 0 && <Link href="/compare">Compare stones ›</Link>}
      </div>
      {trouble !== null && <p role="alert">{trouble}</p>}
      {status === 'open' && batches.length === 0 && (
        <p className="empty">
          Nothing is kept yet. Measure a tray, then press Keep below its stones: from the second check on you
          see how each stone comes along.
        </p>
      )}
      <ul className="batches">
        {batches.map(({ batch, name, checkCount, last, isOver, stones }) => (
          <li key={batch} className="batch-row" data-over={isOver}>
            {last?.photo != null && <Thumbnail photo={last.photo} day={last.day} />}
            <div>
              <Link href={`/journal/${batch}`} className="batch">
                {name}
              </Link>
              <p>
                {stones.length} {stones.length === 1 ? 'stone' : 'stones'},{' '}
                {checkCount === 1 ? '1 check' : `${checkCount} checks`}
                {last !== null && `, last ${last.day} after ${STEP_WORDS[last.step]}`}
                {isOver && ', over'}
              </p>
              {last !== null && <ActionCounts counts={last.actions} />}
            </div>
          </li>
        ))}
      </ul>
      <Machines />
      <InAndOut />
      <StorageNote />
    </div>
  );
}
