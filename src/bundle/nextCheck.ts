import { STEP_FACTS } from '../grading/steps';
import type { BatchHistory } from '../history/batchHistory';
import { dayAfter } from '../history/daysBetween';
import type { MachineRecord } from '../journal/records';
import type { Reminder } from './reminderCalendar';

/**
 * When a batch is to be looked at next: the usual days of its step after its charge, or after its last check when that
 * is newer or no charge was noted. Of a range of usual days the first counts.
 *
 * @param machines - As they were last said; those of the batch's charge or of the batch itself count.
 * @returns Null for a batch that is over, or of which neither charge nor check is known.
 * @see `STEP_FACTS`: common practice.
 */
export function nextCheck(
  history: Pick<BatchHistory, 'batch' | 'runs' | 'checks'>,
  machines: readonly MachineRecord[],
): Reminder | null {
  const { batch, runs, checks } = history;
  if (batch.isOver) return null;
  const run = runs
    .filter(({ endedOn }) => endedOn === null)
    .sort((a, b) => (a.startedOn < b.startedOn ? -1 : 1))
    .at(-1);
  const last = checks.at(-1)?.check;
  const isCheckNewer = last !== undefined && (!run || last.day > run.startedOn);
  const since = isCheckNewer
    ? { step: last.step, day: last.day }
    : run && { step: run.step, day: run.startedOn };
  if (!since) return null;
  // A charge that was not ended is still in the machine, also after a check: its step is the batch's.
  const { title, rotaryDays, vibratoryDays } = STEP_FACTS[run?.step ?? since.step];
  const used = run?.machine ?? batch.machine;
  const isVibratory = machines.find(({ id }) => id === used)?.type === 'vibratory';
  const days = isVibratory ? (vibratoryDays ?? rotaryDays[0]) : rotaryDays[0];
  const note = `${title}, usually ${days} days. Rinse and dry the stones before you photograph them.`;
  return { batch: batch.id, batchName: batch.name, day: dayAfter(since.day, days), note };
}
