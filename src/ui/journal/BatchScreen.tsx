import { useMemo, useState } from 'react';
import { Link, useLocation } from 'wouter';
import type { BatchHistory } from '../../history/batchHistory';
import { batchOutlook } from '../../history/batchOutlook';
import { usualEnds } from '../../history/usualEnds';
import type { RecordId } from '../../journal/records';
import { saidAnew } from '../../state/saidAnew';
import { seenName } from '../../texts/seenName';
import { texts } from '../../texts/speech';
import { SaveBatchPoster } from '../keepsake/SaveBatchPoster';
import { Opening } from '../parts/Opening';
import { Rich } from '../parts/Rich';
import { BatchNextStep } from '../plan/BatchNextStep';
import { useJournal } from '../stores';
import { useSpeech } from '../useSpeech';
import { BatchForm } from './BatchForm';
import { CheckList } from './CheckList';
import { LimitHabits } from './LimitHabits';
import { ReadyChart } from './ReadyChart';
import { Runs } from './Runs';
import { StoneRow } from './StoneRow';
import { useHistory } from './useHistory';

/** A batch: what is ready when, its stones as they stand, what was run, and every check. */
export function BatchScreen({ batch }: { batch: RecordId }) {
  const [share, setShare] = useState(0);
  const [, go] = useLocation();
  const history = useHistory(batch, setShare);
  if (history === undefined) return <Opening share={share} onCancel={() => go('/journal')} />;
  if (history === null) {
    return (
      <p className="empty">
        <Rich text={texts().journal.batch.unknown} />
      </p>
    );
  }
  return <Batch history={history} />;
}

function Batch({ history }: { history: BatchHistory }) {
  const { batches, say } = useJournal((state) => state);
  const speech = useSpeech();
  const words = speech.texts.journal.batch;
  const ends = useMemo(() => usualEnds(batches), [batches]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another language says it in other words
  const outlook = useMemo(() => batchOutlook(history), [history, speech]);
  const { batch, stones, runs, checks } = history;
  const seen = stones.filter((one) => one.checks.length > 0);
  return (
    <div className="journal">
      <p>
        <Link href="/journal">‹ {speech.texts.page.journal}</Link>
      </p>
      <h2>{seenName(batch.name)}</h2>
      <p>{words.started(batch.startedOn, checks.length, batch.isOver)}</p>
      {outlook !== null && (
        <section aria-labelledby="outlook-title" className="outlook">
          <h3 id="outlook-title">{words.outlook}</h3>
          <p>{outlook.sentence}</p>
          <ReadyChart outlook={outlook} />
        </section>
      )}
      {checks.length === 0 ? (
        <p>
          <Rich text={words.noCheck} />
        </p>
      ) : (
        <section aria-labelledby="stones-title">
          <h3 id="stones-title">{words.stones}</h3>
          <ul className="stone-rows">
            {seen.map((stone) => (
              <StoneRow key={stone.stone.id} batch={batch.id} history={stone} ends={ends} />
            ))}
          </ul>
        </section>
      )}
      <BatchNextStep history={history} />
      <LimitHabits stones={stones} />
      <Runs batch={batch} runs={runs} />
      {checks.length > 0 && (
        <>
          <section aria-labelledby="checks-title">
            <h3 id="checks-title">{words.checks}</h3>
            <CheckList history={history} />
          </section>
          <div className="batch-tools">
            <button type="button" className="button" onClick={() => window.print()}>
              {words.print}
            </button>
            <SaveBatchPoster history={history} />
          </div>
        </>
      )}
      <BatchForm
        key={JSON.stringify(batch)}
        batch={batch}
        onSay={(change) => say([saidAnew(batch, change)])}
      />
    </div>
  );
}
