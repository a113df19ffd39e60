import { expect, it } from 'vitest';
import type { Step } from '../../src/grading/steps';
import { batchHistory } from '../../src/history/batchHistory';
import type { MachineRecord, RunRecord } from '../../src/journal/records';
import { recipeFor } from '../../src/recipes/ownRecipes';
import { readCharge } from '../../src/recipes/readCharge';
import { KG_PER_LB } from '../../src/recipes/spoons';
import { runEndedBy, runOf, runOfGroup } from '../../src/recipes/startRun';
import { inventedBatch } from '../helpers/inventedBatch';

const bowl: MachineRecord = {
  ...{ kind: 'machine', id: 'M2', name: 'Bowl', type: 'vibratory', capacityKg: 18 * KG_PER_LB },
};

it('writes the owner’s own charge into the run', () => {
  const own = { M2: { polish: { tablespoons: { polish: 1.25, borax: 0 } } } };
  const run = runOf('B1', bowl, recipeFor(bowl, 'polish', own), '2026-03-10');
  expect(run).toMatchObject({ batch: 'B1', machine: 'M2', step: 'polish', startedOn: '2026-03-10' });
  expect(run.charge).toBe('1 ¼ tablespoons of aluminum oxide polish');
  expect(readCharge(run.charge, 'polish')).toEqual({ polish: 1.25 });
});

it('ends the open run, unless other stones go on in it', () => {
  const { batch } = inventedBatch([]);
  const open: RunRecord = {
    ...{ kind: 'run', id: 'R1', batch: batch.id, machine: null, step: 'coarse', startedOn: '2026-03-02' },
    ...{ endedOn: null, charge: '' },
  };
  const ended = (runs: RunRecord[], step: Step, steps: Step[]) =>
    runEndedBy(
      { batch, runs },
      { step },
      steps.map((one) => ({ step: one })),
    )?.id;
  expect(ended([open], 'medium', ['medium'])).toBe('R1');
  expect(ended([open], 'medium', ['coarse', 'medium'])).toBeUndefined();
  expect(ended([open], 'coarse', ['coarse', 'medium'])).toBe('R1');
  expect(ended([{ ...open, endedOn: '2026-03-09' }], 'coarse', ['coarse'])).toBeUndefined();
});

it('knows that a group is in its machine once its run was started after the check', () => {
  // Checked on March 9.
  const records = inventedBatch([{ step: 'coarse', day: 7, stones: [{}] }]);
  const started = (step: Step, startedOn: string, endedOn: string | null = null) => {
    const run: RunRecord = {
      ...{ kind: 'run', id: 'R1', batch: records.batch.id, machine: null, charge: '' },
      ...{ step, startedOn, endedOn },
    };
    return runOfGroup(batchHistory({ ...records, runs: [run] }), { step: 'medium' })?.id;
  };
  expect(started('medium', '2026-03-09')).toBe('R1');
  expect(started('medium', '2026-03-08')).toBeUndefined();
  expect(started('medium', '2026-03-09', '2026-03-11')).toBeUndefined();
  expect(started('coarse', '2026-03-10')).toBeUndefined();
  expect(runOfGroup(batchHistory(inventedBatch([])), { step: 'medium' })).toBeNull();
});
