import type { BatchHistory } from '../history/batchHistory';
import type { Day, MachineRecord, RecordId, RunRecord } from '../journal/records';
import { chargeText } from './chargeText';
import type { NextGroup } from './nextGroups';
import type { Recipe } from './recipe';
import { openRun } from './underWay';

/** The run that a recipe starts; the journal gives it its id. */
export function runOf(
  batch: RecordId,
  machine: MachineRecord,
  recipe: Recipe,
  today: Day,
): Omit<RunRecord, 'id'> {
  const charge = chargeText(recipe);
  return {
    ...{ kind: 'run', batch, machine: machine.id, step: recipe.step },
    ...{ startedOn: today, endedOn: null, charge },
  };
}

/**
 * The run that ends when a group's next one starts: the one that is open, unless other stones stay at its step and so
 * go on in it.
 */
export function runEndedBy(
  history: Pick<BatchHistory, 'batch' | 'runs'>,
  group: Pick<NextGroup, 'step'>,
  groups: readonly Pick<NextGroup, 'step'>[],
): RunRecord | null {
  const open = openRun(history);
  if (open === null) return null;
  const staysOpen = group.step !== open.step && groups.some(({ step }) => step === open.step);
  return staysOpen ? null : open;
}

/** A group's run that was started on the day of the last check or later and is still open; null before. */
export function runOfGroup(
  { runs, checks }: Pick<BatchHistory, 'runs' | 'checks'>,
  { step }: Pick<NextGroup, 'step'>,
): RunRecord | null {
  const checkedOn = checks.at(-1)?.check.day;
  if (checkedOn === undefined) return null;
  return runs.find((run) => run.step === step && run.endedOn === null && run.startedOn >= checkedOn) ?? null;
}
