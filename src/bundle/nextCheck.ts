import { STEP_FACTS } from '../grading/steps';
import type { BatchHistory } from '../history/batchHistory';
import { dayAfter } from '../history/daysBetween';
import type { MachineRecord } from '../journal/records';
import { texts } from '../texts/speech';
import type { Reminder } from './reminderCalendar';

/** Last day on which an event of a calendar can lie, since it ends on the next one; RFC 5545, 3.3.4: four digits. */
const LAST_DAY = '9999-12-30';

/**
 * When a batch is to be looked at next: the usual days of its step after its charge, or after its last check when that
 * is newer or no charge was noted. Of a range of usual days the first counts.
 *
 * @param machines - As they were last said; those of the batch's charge or of the batch itself count.
 * @returns Null for a batch that is over, or of which neither charge nor check is known, or that ends with the calendar.
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
  const step = run?.step ?? since.step;
  const { rotaryDays, vibratoryDays } = STEP_FACTS[step];
  const used = run?.machine ?? batch.machine;
  const isVibratory = machines.find(({ id }) => id === used)?.type === 'vibratory';
  const days = isVibratory ? (vibratoryDays ?? rotaryDays[0]) : rotaryDays[0];
  const { bundle, verdicts } = texts();
  const note = bundle.calendar.note(verdicts.steps[step], days);
  const day = dayAfter(since.day, days);
  return day > LAST_DAY ? null : { batch: batch.id, batchName: batch.name, day, note };
}
