import type { BatchHistory } from '../../history/batchHistory';
import type { RunRecord } from '../../journal/records';
import { dayToday } from '../../state/dayToday';
import { saidAnew } from '../../state/saidAnew';
import { texts } from '../../texts/speech';
import { useJournal, useUndo } from '../stores';
import { NextStep } from './NextStep';
import { usePlanSettings } from './usePlanSettings';

/** What to do next with a batch of the journal. */
export function BatchNextStep({ history }: { history: BatchHistory }) {
  const { machines, say } = useJournal((state) => state);
  const { plan, units, changePlan } = usePlanSettings();
  const { withdraw } = useJournal((state) => state);
  const { done } = useUndo();
  const today = dayToday();
  const start = async (run: Omit<RunRecord, 'id'>, ended: RunRecord | null) => {
    const ids = await say([run, ...(ended ? [saidAnew(ended, { endedOn: today })] : [])]);
    if (ids === null) return;
    const undo = async () => {
      await withdraw(run.batch, ids.slice(0, 1), true);
      if (ended) await say([saidAnew(ended, {})]);
    };
    done({ said: () => texts().journal.runs.startedUndo, undo: () => void undo() });
  };
  if (history.batch.isOver) return null;
  return (
    <NextStep
      history={history}
      machines={machines}
      today={today}
      units={units}
      settings={plan}
      onChange={changePlan}
      onStart={start}
    />
  );
}
