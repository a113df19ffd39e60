import { useEffect, useState } from 'react';
import type { BatchHistory } from '../../history/batchHistory';
import { batchesForPlan } from '../../state/batchesForPlan';
import { calendarOf } from '../../state/journalExchange';
import { dayToday } from '../journal/dayToday';
import { saveFile } from '../parts/saveFile';
import { useJournal } from '../stores';
import { PlanScreen } from './PlanScreen';
import { usePlanSettings } from './usePlanSettings';

/** The plan of the journal's batches. */
export function Plan() {
  const { opened, edition, machines } = useJournal((state) => state);
  const { plan, units, changePlan } = usePlanSettings();
  const [batches, setBatches] = useState<readonly BatchHistory[] | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new edition is a reason to read them again
  useEffect(() => {
    let isStale = false;
    opened.then(batchesForPlan).then(
      (found) => !isStale && setBatches(found),
      () => !isStale && setBatches([]),
    );
    return () => {
      isStale = true;
    };
  }, [opened, edition]);
  if (batches === null) return <p className="empty">Opening…</p>;
  const today = dayToday();
  const saveCalendar = async () => {
    const open = batches.filter(({ batch }) => !batch.isOver).map(({ batch }) => batch.id);
    const file = await calendarOf(await opened, open, machines);
    if (file !== null) saveFile(file, `glintgrade-${today}.ics`);
  };
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
