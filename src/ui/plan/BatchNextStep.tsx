import type { BatchHistory } from '../../history/batchHistory';
import { saidAnew } from '../../state/saidAnew';
import { dayToday } from '../journal/dayToday';
import { useJournal } from '../stores';
import { NextStep } from './NextStep';
import { usePlanSettings } from './usePlanSettings';

/** What to do next with a batch of the journal. */
export function BatchNextStep({ history }: { history: BatchHistory }) {
  const { machines, say } = useJournal((state) => state);
  const { plan, units, changePlan } = usePlanSettings();
  const today = dayToday();
  if (history.batch.isOver) return null;
  return (
    <NextStep
      history={history}
      machines={machines}
      today={today}
      units={units}
      settings={plan}
      onChange={changePlan}
      onStart={(run, ended) => say([...(ended ? [saidAnew(ended, { endedOn: today })] : []), run])}
    />
  );
}
