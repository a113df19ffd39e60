import { useState } from 'react';
import { Link } from 'wouter';
import { troubleWords } from '../../state/journalTrouble';
import { seenName } from '../../texts/seenName';
import { texts } from '../../texts/speech';
import { useIsExample, useJournal } from '../stores';
import { ActionCounts } from './ActionCounts';
import { ExampleNote } from './ExampleNote';
import { InAndOut } from './InAndOut';
import { Machines } from './Machines';
import { SaveNote } from './SaveNote';
import { StorageNote } from './StorageNote';
import { Thumbnail } from './Thumbnail';

/** Batches listed at first: more than a phone shows, fewer than slow it down. */
const SHOWN = 40;

/** Every batch, the one checked last first, and what belongs to all of them. */
export function JournalScreen() {
  const { status, batches, trouble, restored } = useJournal((state) => state);
  const { journal: words, page, start, verdicts } = texts();
  const isExample = useIsExample();
  const [all, setAll] = useState(false);
  const isEmpty = status === 'open' && batches.length === 0;
  // What belongs to all batches comes with them, or their list would push it down.
  const isFilled = status !== 'opening' && !(isExample && isEmpty);
  const shown = all ? batches : batches.slice(0, SHOWN);
  return (
    <div className="journal">
      <div className="journal-path">
        <h2>{page.journal}</h2>
        {batches.length > 0 && <Link href="/compare">{words.compare}</Link>}
      </div>
      {trouble !== null && <p role="alert">{troubleWords(trouble)}</p>}
      {restored > 0 && <p role="status">{words.restored(restored)}</p>}
      {isEmpty && !isExample && <p className="empty">{words.empty}</p>}
      <ExampleNote isEmpty={isEmpty} />
      <SaveNote />
      {isFilled && (
        <>
          <p>
            <Link href="/start" className="button button-strong">
              {start.title}
            </Link>
          </p>
          <ul className="batches">
            {shown.map(({ batch, name, checkCount, last, isOver, stones }) => (
              <li key={batch} className="batch-row" data-over={isOver}>
                {last?.photo != null && <Thumbnail photo={last.photo} day={last.day} />}
                <div>
                  <Link href={`/journal/${batch}`} className="batch">
                    {seenName(name)}
                  </Link>
                  <p>
                    {words.batchLine(
                      stones.length,
                      checkCount,
                      last && { day: last.day, step: verdicts.stepsWithin[last.step] },
                      isOver,
                    )}
                  </p>
                  {last !== null && <ActionCounts counts={last.actions} />}
                </div>
              </li>
            ))}
          </ul>
          {shown.length < batches.length && (
            <button type="button" className="button" onClick={() => setAll(true)}>
              {words.showMore(batches.length - shown.length)}
            </button>
          )}
          <Machines />
          <InAndOut />
          <StorageNote />
        </>
      )}
    </div>
  );
}
