import { useEffect, useState } from 'react';
import { useLocation } from 'wouter';
import type { BatchHistory } from '../../history/batchHistory';
import { batchesForPlan } from '../../state/batchesForPlan';
import { dayToday } from '../../state/dayToday';
import { calendarOf } from '../../state/journalExchange';
import { texts } from '../../texts/speech';
import { Opening } from '../parts/Opening';
import { saveFile } from '../parts/saveFile';
import { useJournal, useRun } from '../stores';
import { useSpeech } from '../useSpeech';
import { PlanScreen } from './PlanScreen';
import { usePlanSettings } from './usePlanSettings';

/** The plan of the journal's batches. */
export function Plan() {
  useSpeech();
  const run = useRun();
  const [, go] = useLocation();
  const [share, setShare] = useState(0);
  const { opened, edition, machines } = useJournal((state) => state);
  const { plan, units, changePlan } = usePlanSettings();
  const [batches, setBatches] = useState<readonly BatchHistory[] | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new edition is a reason to read them again
  useEffect(() => {
    let isStale = false;
    const leaving = new AbortController();
    const onProgress = (now: number) => batches === null && setShare(now);
    const watch = { signal: leaving.signal, onProgress };
    opened
      .then((journal) => batchesForPlan(journal, watch))
      .then(
        (found) => !isStale && setBatches(found),
        () => !isStale && setBatches([]),
      );
    return () => {
      isStale = true;
      leaving.abort();
    };
  }, [opened, edition]);
  if (batches === null) return <Opening share={share} onCancel={() => go('/')} />;
  const today = dayToday();
  const saveCalendar = () =>
    run(
      () => texts().work.savingReminders,
      async (watch) => {
        const open = batches.filter(({ batch }) => !batch.isOver).map(({ batch }) => batch.id);
        const file = await calendarOf(await opened, open, machines, watch);
        if (file !== null) saveFile(file, `glintgrade-${today}.ics`);
      },
    );
  return (
    <PlanScreen
      batches={batches}
      machines={machines}
      today={today}
      units={units}
      settings={plan}
      onChange={changePlan}
      onCalendar={saveCalendar}
    />
  );
}
