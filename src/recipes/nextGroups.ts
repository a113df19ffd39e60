import type { MaterialName } from '../grading/materials';
import type { Action } from '../grading/opinion';
import { STEPS, type Step } from '../grading/steps';
import { adviceAt } from '../history/adviceAt';
import type { BatchHistory, StoneCheck } from '../history/batchHistory';
import type { MachineRecord, RecordId } from '../journal/records';
import { type SeenSize, type StoneLoad, stoneLoad } from './stoneLoad';

/** Stones of a batch that go through the same step next. */
export interface NextGroup {
  /** Step they come out of. */
  readonly from: Step;
  /** Step they go into. */
  readonly step: Step;
  /** Of each: the stone, under the name it has in the journal. */
  readonly stones: readonly { readonly id: RecordId; readonly name: string }[];
  /** Each material of these stones once; unknown ones are left out. */
  readonly materials: readonly MaterialName[];
  readonly load: StoneLoad;
  /** True when the step is finer: then everything is washed out first. */
  readonly needsWashOut: boolean;
}

/**
 * Where the stones of a batch's last check go, by what the owner did with each, or what was advised where nothing was
 * said. Stones set aside or finished go nowhere; those to be looked at closer stay where they are.
 *
 * @returns The coarsest step first; empty before the first check and for a batch that is over.
 */
export function nextGroups({ batch, checks, stones }: BatchHistory): NextGroup[] {
  const last = checks.at(-1)?.check;
  if (last === undefined || batch.isOver) return [];
  const here = stones.flatMap(({ stone, checks: seen }) => {
    const now = seen.at(-1);
    if (now?.check.id !== last.id) return [];
    const step = stepAfter(last.step, now.decision ?? adviceAt(now));
    return step === null ? [] : [{ stone, step, size: sizeOf(now) }];
  });
  return STEPS.flatMap((step): NextGroup[] => {
    const group = here.filter((one) => one.step === step);
    if (group.length === 0) return [];
    return [
      {
        ...{ from: last.step, step },
        stones: group.map(({ stone }) => ({ id: stone.id, name: stone.name })),
        materials: [...new Set(group.flatMap(({ stone }) => stone.material ?? last.material ?? []))],
        load: stoneLoad(group.map(({ size }) => size)),
        needsWashOut: isFiner(step, last.step),
      },
    ];
  });
}

/** Whether a step's grit is finer than another's. */
export const isFiner = (step: Step, than: Step): boolean => STEPS.indexOf(step) > STEPS.indexOf(than);

/** Whether a step is usually run in such a machine: coarse in a barrel, the finer steps in a bowl. */
export const isUsualAt = ({ type }: Pick<MachineRecord, 'type'>, step: Step): boolean =>
  (type === 'rotary') === (step === 'coarse');

/** Step a stone goes into; null when it leaves the machines. */
function stepAfter(step: Step, action: Action): Step | null {
  switch (action) {
    case 'advance':
      return STEPS[STEPS.indexOf(step) + 1] ?? null;
    case 'repeat':
    case 'look-closer':
      return step;
    case 'back-to-coarse':
      return 'coarse';
    case 'set-aside':
    case 'finished':
      return null;
  }
}

function sizeOf({ faces }: StoneCheck): SeenSize {
  const most = (figure: 'lengthMm' | 'widthMm' | 'areaMm2') =>
    Math.max(...faces.map(({ stone }) => stone[figure]));
  return { lengthMm: most('lengthMm'), widthMm: most('widthMm'), areaMm2: most('areaMm2') };
}

/**
 * The machine to suggest for a step: that of the batch's last run at this step, else the batch's own, else the first
 * whose kind is usual for the step (a barrel for coarse, a bowl after it), else any. A bowl is not suggested for coarse
 * while there is a barrel, unless coarse was run in it before.
 *
 * @returns Null without machines.
 */
export function machineFor(
  { batch, runs }: Pick<BatchHistory, 'batch' | 'runs'>,
  step: Step,
  machines: readonly MachineRecord[],
): MachineRecord | null {
  const ranAt = runs
    .filter((run) => run.step === step && run.machine !== null)
    .toSorted((a, b) => (a.startedOn < b.startedOn ? -1 : 1))
    .at(-1)?.machine;
  const known = (id: RecordId | null | undefined) => machines.find((machine) => machine.id === id);
  const own = known(batch.machine);
  const ownFits = own !== undefined && (step !== 'coarse' || isUsualAt(own, step)) ? own : undefined;
  const usual = machines.find((machine) => isUsualAt(machine, step));
  return known(ranAt) ?? ownFits ?? usual ?? own ?? machines[0] ?? null;
}
