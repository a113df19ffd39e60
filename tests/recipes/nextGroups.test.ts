import { expect, it } from 'vitest';
import type { Action } from '../../src/grading/opinion';
import type { Step } from '../../src/grading/steps';
import { type BatchHistory, batchHistory } from '../../src/history/batchHistory';
import type { DecisionRecord, MachineRecord, RunRecord } from '../../src/journal/records';
import { machineFor, nextGroups } from '../../src/recipes/nextGroups';
import { inventedBatch } from '../helpers/inventedBatch';

/** A batch whose last check the owner sorted so. */
function sorted(step: Step, actions: readonly Action[]): BatchHistory {
  const records = inventedBatch([{ step, day: 7, stones: actions.map(() => ({})) }]);
  const check = records.checks[0]!;
  const decisions = actions.map(
    (action, i): DecisionRecord => ({
      ...{ kind: 'decision', id: `01B4000${i}`, batch: records.batch.id, check: check.id },
      ...{ stone: records.stones[i]!.id, action },
    }),
  );
  return batchHistory({ ...records, decisions });
}

const told = (history: BatchHistory) =>
  nextGroups(history).map(({ step, stones, needsWashOut }) => [
    step,
    stones.map(({ name }) => name).join(' '),
    needsWashOut,
  ]);

it('parts a check in coarse into what stays and what goes on', () => {
  const actions: Action[] = ['advance', 'repeat', 'set-aside', 'look-closer', 'back-to-coarse', 'advance'];
  expect(told(sorted('coarse', actions))).toEqual([
    ['coarse', '2 4 5', false],
    ['medium', '1 6', true],
  ]);
});

it('sends stones back to coarse from a finer step without a wash-out', () => {
  expect(told(sorted('fine', ['advance', 'back-to-coarse', 'repeat']))).toEqual([
    ['coarse', '2', false],
    ['fine', '3', false],
    ['prepolish', '1', true],
  ]);
});

it('lets polished stones out', () => {
  expect(told(sorted('polish', ['finished', 'advance', 'repeat']))).toEqual([['polish', '3', false]]);
});

it('weighs each group by its stones', () => {
  const [stay, on] = nextGroups(sorted('coarse', ['repeat', 'advance', 'advance']));
  expect(stay?.load.count).toBe(1);
  expect(on!.load.kg / stay!.load.kg).toBeCloseTo(2, 9);
});

it('names the materials of a group once', () => {
  const history = sorted('coarse', ['repeat', 'repeat', 'advance', 'repeat']);
  const kinds = ['agate', 'agate', 'opal', null] as const;
  const stones = history.stones.map((one, i) => ({ ...one, stone: { ...one.stone, material: kinds[i]! } }));
  expect(nextGroups({ ...history, stones }).map(({ materials }) => materials)).toEqual([['agate'], ['opal']]);
});

it('has nothing to say before the first check, and of a batch that is over', () => {
  expect(nextGroups(batchHistory(inventedBatch([])))).toEqual([]);
  const history = sorted('coarse', ['repeat']);
  expect(nextGroups({ ...history, batch: { ...history.batch, isOver: true } })).toEqual([]);
});

const barrel: MachineRecord = { kind: 'machine', id: 'M1', name: 'Barrel', type: 'rotary', capacityKg: 3 };
const bowl: MachineRecord = { kind: 'machine', id: 'M2', name: 'Bowl', type: 'vibratory', capacityKg: 8 };
const run = (step: Step, machine: string, startedOn: string): RunRecord => ({
  ...{ kind: 'run', id: `R${startedOn}`, batch: 'B', machine, step, startedOn, endedOn: null, charge: '' },
});

it('suggests the machine that was used, then the one that is usual', () => {
  const { batch } = inventedBatch([]);
  const idFor = (step: Step, runs: RunRecord[], own: string | null = null, machines = [bowl, barrel]) =>
    machineFor({ batch: { ...batch, machine: own }, runs }, step, machines)?.id;
  expect(idFor('coarse', [])).toBe('M1');
  expect(idFor('fine', [])).toBe('M2');
  expect(idFor('fine', [], 'M1')).toBe('M1');
  expect(idFor('coarse', [], 'M2')).toBe('M1');
  expect(idFor('fine', [run('fine', 'M1', '2026-03-02'), run('fine', 'M2', '2026-02-01')])).toBe('M1');
  expect(idFor('fine', [run('fine', 'gone', '2026-03-02')])).toBe('M2');
  expect(idFor('coarse', [], null, [bowl])).toBe('M2');
  expect(idFor('coarse', [], null, [])).toBeUndefined();
});
