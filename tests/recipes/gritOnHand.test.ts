import fc from 'fast-check';
import { expect, it } from 'vitest';
import { batchHistory } from '../../src/history/batchHistory';
import { recordId } from '../../src/journal/recordId';
import type { MachineRecord, RunRecord } from '../../src/journal/records';
import { chargesOf, gritOnHand, momentOf } from '../../src/recipes/gritOnHand';
import { KG_PER_LB } from '../../src/recipes/spoons';
import { gramsOf } from '../../src/recipes/supplies';
import { type CheckSo, inventedBatch } from '../helpers/inventedBatch';

const bowl: MachineRecord = {
  ...{ kind: 'machine', id: 'M2', name: 'Bowl', type: 'vibratory', capacityKg: 18 * KG_PER_LB },
};
const barrel: MachineRecord = {
  ...{ kind: 'machine', id: 'M1', name: 'Barrel', type: 'rotary', capacityKg: 3 * KG_PER_LB },
};
const machines = [barrel, bowl];

function chargesWith(runs: readonly Partial<RunRecord>[], checks: readonly CheckSo[] = []) {
  const records = inventedBatch(checks);
  const whole = runs.map(
    (run, i): RunRecord => ({
      ...{ kind: 'run', id: `R${i}`, batch: records.batch.id, machine: 'M2', step: 'fine' },
      ...{ startedOn: '2026-03-02', endedOn: null, charge: '' },
      ...run,
    }),
  );
  return chargesOf(batchHistory({ ...records, runs: whole }), machines, {});
}

const counted = (grams: number, day = '2026-03-01', atMs = 0) => ({ grams, day, atMs });

it('takes off what the runs since used', () => {
  const charges = chargesWith([
    { startedOn: '2026-02-27' },
    { startedOn: '2026-03-02', charge: '2 tablespoons, with 1 tablespoon of borax' },
    { startedOn: '2026-03-05' },
  ]);
  const [fine, borax] = gritOnHand({ fine: counted(200), borax: counted(10) }, charges, machines, {});
  // 2 tablespoons as written, and the bowl's own of 1, since nothing was written.
  expect(fine).toMatchObject({ supply: 'fine', charges: 2, assumed: 1 });
  expect(fine!.grams).toBeCloseTo(200 - gramsOf('fine', 3), 9);
  // More borax was used than there was: none is left, and not less than none.
  expect(borax).toMatchObject({ supply: 'borax', grams: 0, enough: { charges: 0 } });
});

it('says how many charges it is enough for, in the machine that takes most', () => {
  const stock = { coarse: counted(gramsOf('coarse', 9)), fine: counted(gramsOf('fine', 10)) };
  const told = (...about: Parameters<typeof gritOnHand>) =>
    gritOnHand(...about).map(({ enough }) => enough && [enough.machine.name, enough.charges]);
  // Coarse is usually ground in the barrel, which takes 3 tablespoons; fine in the bowl, which takes 1.
  expect(told(stock, [], machines, {})).toEqual([
    ['Barrel', 3],
    ['Bowl', 10],
  ]);
  // Once fine was run in the barrel, 3 tablespoons of it count; the run itself took 3 of the 10.
  expect(told(stock, chargesWith([{ machine: 'M1' }]), machines, {})[1]).toEqual(['Barrel', 2]);
  expect(told(stock, [], [bowl], {})).toEqual([null, ['Bowl', 10]]);
  expect(told(stock, [], [{ ...bowl, capacityKg: null }], {})[1]).toBeNull();
});

it('counts a recharge at each check in coarse, save the last before the wash-out', () => {
  const checks = [7, 14, 21].map((day): CheckSo => ({ step: 'coarse', day, stones: [{}] }));
  const run = { step: 'coarse', machine: 'M1', charge: '3 tablespoons' } as const;
  const daysOf = (endedOn: string | null) => chargesWith([{ ...run, endedOn }], checks).map(({ day }) => day);
  expect(daysOf('2026-03-23')).toEqual(['2026-03-02', '2026-03-09', '2026-03-16']);
  expect(daysOf(null)).toEqual(['2026-03-02', '2026-03-09', '2026-03-16', '2026-03-23']);
});

it('knows before and after on one day by when it was written down', () => {
  const id = recordId();
  const stock = (atMs: number) => ({ fine: counted(100, '2026-03-02', atMs) });
  const charges = chargesWith([{ id }]);
  const usedAfter = (atMs: number) => gritOnHand(stock(atMs), charges, machines, {})[0]?.charges;
  expect(usedAfter(momentOf(id) - 1)).toBe(1);
  expect(usedAfter(momentOf(id) + 1)).toBe(0);
});

it('reads the moment out of a ULID', () => {
  // The example of the ULID specification (from memory): 01ARZ3NDEKTSV4RRFFQ69G5FAV was made in July 2016.
  expect(new Date(momentOf('01ARZ3NDEKTSV4RRFFQ69G5FAV')).toISOString().slice(0, 7)).toBe('2016-07');
  const before = Date.now();
  const moment = momentOf(recordId());
  expect(moment).toBeGreaterThanOrEqual(before);
  expect(moment).toBeLessThanOrEqual(Date.now());
  expect(momentOf('R1')).toBeNaN();
});

it('has never more left than was counted, and less after every charge', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 5000, noNaN: true }), fc.nat(8), (grams, runCount) => {
      const run = { startedOn: '2026-03-03' };
      const leftAfter = (count: number) =>
        gritOnHand({ fine: counted(grams) }, chargesWith(Array(count).fill(run)), machines, {})[0]!.grams;
      expect(leftAfter(0)).toBe(grams);
      expect(leftAfter(runCount + 1)).toBeLessThanOrEqual(leftAfter(runCount));
      expect(leftAfter(runCount)).toBeGreaterThanOrEqual(0);
    }),
  );
});

it('takes nothing off for a run of which nothing is known', () => {
  const charges = chargesWith([{ machine: null }]);
  expect(charges).toMatchObject([{ charge: null, isAssumed: true, step: 'fine' }]);
  expect(gritOnHand({ fine: counted(100) }, charges, machines, {})[0]?.grams).toBe(100);
});
