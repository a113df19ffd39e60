import { useMemo } from 'react';
import { Link } from 'wouter';
import type { BatchHistory } from '../../history/batchHistory';
import { batchOutlook } from '../../history/batchOutlook';
import { usualEnds } from '../../history/usualEnds';
import type { RecordId } from '../../journal/records';
import { saidAnew } from '../../state/saidAnew';
import { SaveBatchPoster } from '../keepsake/SaveBatchPoster';
import { BatchNextStep } from '../plan/BatchNextStep';
import { useJournal } from '../stores';
import { BatchForm } from './BatchForm';
import { CheckList } from './CheckList';
import { LimitHabits } from './LimitHabits';
import { ReadyChart } from './ReadyChart';
import { Runs } from './Runs';
import { StoneRow } from './StoneRow';
import { useHistory } from './useHistory';

/** A batch: what is ready when, its stones as they stand, what was run, and every check. */
export function BatchScreen({ batch }: { batch: RecordId }) {
  const history = useHistory(batch);
  if (history === undefined) return <p className="empty">Opening…</p>;
  if (history === null) {
    return (
      <p className="empty">
        This batch is not in the journal of this browser. <Link href="/journal">All batches</Link>
      </p>
    );
  }
  return <Batch history={history} />;
}

function Batch({ history }: { history: BatchHistory }) {
  const { batches, say } = useJournal((state) => state);
  const ends = useMemo(() => usualEnds(batches), [batches]);
  const outlook = useMemo(() => batchOutlook(history), [history]);
  const { batch, stones, runs, checks } = history;
  const seen = stones.filter((one) => one.checks.length > 0);
  return (
    <div className="journal">
      <p>
        <Link href="/journal">‹ Journal</Link>
      </p>
      <h2>{batch.name}</h2>
      <p>
        Started {batch.startedOn}, {checks.length === 1 ? '1 check' : `${checks.length} checks`}
        {batch.isOver && ', over'}.
      </p>
      {outlook !== null && (
        <section aria-labelledby="outlook-title" className="outlook">
          <h3 id="outlook-title">What is ready when</h3>
          <p>{outlook.sentence}</p>
          <ReadyChart outlook={outlook} />
        </section>
      )}
      <section aria-labelledby="stones-title">
        <h3 id="stones-title">Stones</h3>
        <ul className="stone-rows">
          {seen.map((stone) => (
            <StoneRow key={stone.stone.id} batch={batch.id} history={stone} ends={ends} />
          ))}
        </ul>
      </section>
      <BatchNextStep history={history} />
      <LimitHabits stones={stones} />
      <Runs batch={batch} runs={runs} />
      <section aria-labelledby="checks-title">
        <h3 id="checks-title">Checks</h3>
        <CheckList history={history} />
      </section>
      <div className="batch-tools">
        <button type="button" className="button" onClick={() => window.print()}>
          Print this batch
        </button>
        <SaveBatchPoster history={history} />
      </div>
      <BatchForm
        key={`${batch.name} ${batch.machine} ${batch.startedOn} ${batch.isOver}`}
        batch={batch}
        onSay={(change) => say([saidAnew(batch, change)])}
      />
    </div>
  );
}
