import type { Step } from '../grading/steps';
import type { BatchHistory } from '../history/batchHistory';
import { daysBetween } from '../history/daysBetween';
import type { Day, MachineRecord, RecordId, RunRecord } from '../journal/records';

/** A batch that is in a machine now. */
export interface UnderWay {
  readonly batch: RecordId;
  readonly batchName: string;
  readonly step: Step;
  readonly machine: RecordId | null;
  /** Days since its charge; 0 on the day itself. */
  readonly day: number;
}

/** The run that was begun last and not washed out; null when there is none, or the batch is over. */
export function openRun({ batch, runs }: Pick<BatchHistory, 'batch' | 'runs'>): RunRecord | null {
  if (batch.isOver) return null;
  const open = runs.filter(({ endedOn }) => endedOn === null);
  return open.toSorted((a, b) => (a.startedOn < b.startedOn ? -1 : 1)).at(-1) ?? null;
}

/** What turns now: one entry for each batch with an open run, in the order of the batches. */
export function underWay(batches: readonly BatchHistory[], today: Day): UnderWay[] {
  return batches.flatMap((history): UnderWay[] => {
    const run = openRun(history);
    if (run === null) return [];
    const { id, name } = history.batch;
    const machine = run.machine ?? history.batch.machine;
    const day = Math.max(0, daysBetween(run.startedOn, today) || 0);
    return [{ batch: id, batchName: name, step: run.step, machine, day }];
  });
}

/** Machines with nothing in them, as far as the journal knows. */
export function idleMachines(
  machines: readonly MachineRecord[],
  turning: readonly UnderWay[],
): MachineRecord[] {
  return machines.filter(({ id }) => turning.every(({ machine }) => machine !== id));
}
