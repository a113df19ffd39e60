import { useState } from 'react';
import { Link } from 'wouter';
import { STEP_WORDS } from '../setup/stepWords';
import { useJournal } from '../stores';
import { ActionCounts } from './ActionCounts';
import { ExampleNote } from './ExampleNote';
import { InAndOut } from './InAndOut';
import { Machines } from './Machines';
import { StorageNote } from './StorageNote';
import { Thumbnail } from './Thumbnail';

/** Batches listed at first: more than a phone shows, fewer than slow it down. */
const SHOWN = 40;

/** Every batch, the one checked last first, and what belongs to all of them. */
export function JournalScreen() {
  const { status, batches, trouble } = useJournal((state) => state);
  const [all, setAll] = useState(false);
  const shown = all ? batches : batches.slice(0, SHOWN);
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
      <ExampleNote isEmpty={status === 'open' && batches.length === 0} />
      <ul className="batches">
        {shown.map(({ batch, name, checkCount, last, isOver, stones }) => (
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
      {shown.length < batches.length && (
        <button type="button" className="button" onClick={() => setAll(true)}>
          Show {batches.length - shown.length} more
        </button>
      )}
      <Machines />
      <InAndOut />
      <StorageNote />
    </div>
  );
}
