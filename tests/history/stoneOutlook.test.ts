import { expect, it } from 'vitest';
import { batchHistory } from '../../src/history/batchHistory';
import { batchOutlook } from '../../src/history/batchOutlook';
import { stoneOutlook, weeks } from '../../src/history/stoneOutlook';
import { type CheckSo, inventedBatch, type SeenSo, weeksInCoarse } from '../helpers/inventedBatch';

const checksOf = (checks: readonly CheckSo[]) => batchHistory(inventedBatch(checks)).stones[0]!.checks;
const coarse = (...seen: SeenSo[]) => checksOf(weeksInCoarse(seen.map((stone) => [stone])));

it('says that a stone within the limits is ready', () => {
  expect(stoneOutlook(coarse({ pits: 12 }, { pits: 1 }))).toMatchObject({ kind: 'ready', days: null });
});

it('says nothing of the future after one check', () => {
  expect(stoneOutlook(coarse({ fractureMm: 9 }))).toMatchObject({ kind: 'early' });
});

it('counts the weeks of a stone that comes along', () => {
  // 12 exp(−t / 2.2): 12, 7.6, 4.8, 3.1 mm; down to 2 mm after another check.
  const found = stoneOutlook(
    coarse({ fractureMm: 12 }, { fractureMm: 7.6 }, { fractureMm: 4.8 }, { fractureMm: 3.1 }),
  )!;
  expect(found.kind).toBe('clears');
  expect(found.days!.middle).toBeGreaterThan(3);
  expect(found.days!.middle).toBeLessThan(21);
  expect(found.days!.low).toBeLessThanOrEqual(found.days!.middle);
  expect(found.days!.high).toBeGreaterThanOrEqual(found.days!.middle);
  expect(found.sentence).toMatch(/^About \d+ (day|week)s?/);
});

it('gives up on a fracture that no longer gets shorter', () => {
  const flat = [14, 9, 7.4, 7, 7, 7].map((fractureMm) => ({ fractureMm }));
  const found = stoneOutlook(coarse(...flat))!;
  expect(found.kind).toBe('stays');
  expect(found.sentence).toContain('Saw it, break the piece off, or accept it');
});

it('sees that a small stone would be too small first', () => {
  const shrinking = [12, 9.5, 7.5, 6, 4.8].map((fractureMm, i) => ({
    fractureMm,
    lengthMm: 11 * 0.975 ** i,
  }));
  expect(stoneOutlook(coarse(...shrinking))!.kind).toBe('too-small');
});

it('has nothing to say of a stone that left coarse, and starts anew when it comes back', () => {
  const left = [...weeksInCoarse([[{ pits: 1 }]]), { step: 'fine', day: 14, stones: [{ pits: 9 }] }] as const;
  expect(stoneOutlook(checksOf(left))).toBeNull();
  expect(stoneOutlook(checksOf([...left, { step: 'coarse', day: 28, stones: [{ pits: 9 }] }]))).toMatchObject(
    {
      kind: 'early',
    },
  );
});

it('speaks of days when it is a matter of days, and of weeks otherwise', () => {
  expect(weeks({ middle: 8, low: 4, high: 11 })).toBe('about 8 days (4 to 11)');
  expect(weeks({ middle: 21, low: 14, high: 35 })).toBe('about 3 weeks (2 to 5)');
});

it('plans a barrel: what is ready now, what later, what never', () => {
  const flat = [14, 9, 7.4, 7, 7, 7];
  const batch = batchHistory(
    inventedBatch(
      weeksInCoarse(
        flat.map((fractureMm, i) => [{}, { fractureMm }, { fractureMm: 24 * Math.exp(-i / 2.6) }]),
      ),
    ),
  );
  const plan = batchOutlook(batch)!;
  expect(plan).toMatchObject({ inCoarse: 3, ready: 1, staying: 1 });
  expect(plan.readyAfter[0]).toEqual({ days: 0, stones: 1 });
  expect(plan.readyAfter.at(-1)!.stones).toBe(2);
  expect(plan.sentence).toMatch(/^1 of 3 is ready; 1 more will clear/);
  expect(batchOutlook({ stones: [], checks: [] })).toBeNull();
});
