import fc from 'fast-check';
import { expect, it } from 'vitest';
import { batchHistory } from '../../src/history/batchHistory';
import { dayAfter } from '../../src/history/daysBetween';
import type { MachineRecord, RunRecord } from '../../src/journal/records';
import { dueList } from '../../src/recipes/dueList';
import { idleMachines, underWay } from '../../src/recipes/underWay';
import { inventedBatch } from '../helpers/inventedBatch';

const TODAY = '2026-03-10';

it('sorts by day: past, today, the week ahead, later', () => {
  const days = ['2026-03-17', '2026-03-09', '2026-03-10', '2026-03-18', '2026-02-28', '2026-03-11'];
  const list = dueList(
    days.map((day) => ({ day })),
    TODAY,
  );
  const told = (part: keyof typeof list) => list[part].map(({ due, inDays }) => [due.day.slice(5), inDays]);
  expect(told('overdue')).toEqual([
    ['02-28', -10],
    ['03-09', -1],
  ]);
  expect(told('today')).toEqual([['03-10', 0]]);
  expect(told('soon')).toEqual([
    ['03-11', 1],
    ['03-17', 7],
  ]);
  expect(told('later')).toEqual([['03-18', 8]]);
});

it('names everything once, whatever the days', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -900, max: 900 })), fc.nat(30), (offsets, ahead) => {
      const { overdue, today, soon, later } = dueList(
        offsets.map((offset, i) => ({ day: dayAfter(TODAY, offset), i })),
        TODAY,
        ahead,
      );
      const all = [...overdue, ...today, ...soon, ...later];
      expect(all.map(({ due }) => due.i).sort((a, b) => a - b)).toEqual(offsets.map((_, i) => i));
      expect(all.map(({ inDays }) => inDays)).toEqual(offsets.toSorted((a, b) => a - b));
    }),
  );
});

it('leaves out what has no day', () => {
  expect(dueList([{ day: 'soon' }], TODAY)).toEqual({ overdue: [], today: [], soon: [], later: [] });
});

const machines: MachineRecord[] = [
  { kind: 'machine', id: 'M1', name: 'Barrel', type: 'rotary', capacityKg: 3 },
  { kind: 'machine', id: 'M2', name: 'Bowl', type: 'vibratory', capacityKg: 8 },
];

it('knows what turns where, since when, and which machine is free', () => {
  const records = inventedBatch([]);
  const run = (id: string, startedOn: string, endedOn: string | null): RunRecord => ({
    ...{ kind: 'run', id, batch: records.batch.id, machine: 'M1', step: 'coarse', startedOn, endedOn },
    charge: '',
  });
  const history = batchHistory({
    ...records,
    runs: [run('R1', '2026-03-02', '2026-03-05'), run('R2', '2026-03-06', null)],
  });
  const turning = underWay([history], TODAY);
  expect(turning).toEqual([
    { batch: records.batch.id, batchName: 'Brook pebbles', step: 'coarse', machine: 'M1', day: 4 },
  ]);
  expect(idleMachines(machines, turning).map(({ id }) => id)).toEqual(['M2']);
  expect(underWay([{ ...history, batch: { ...history.batch, isOver: true } }], TODAY)).toEqual([]);
});
