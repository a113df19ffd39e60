import fc from 'fast-check';
import { expect, it } from 'vitest';
import { forecast, LEVEL_NOISE, WILL_NOT_CLEAR } from '../../src/grading/forecast';

/** Levels of the grinding law without noise. */
const lawOf = (start: number, floor: number, tau: number, checks: number) =>
  Array.from({ length: checks }, (_, t) => floor + (start - floor) * Math.exp(-t / tau));
const LITTLE = { kept: 0, fresh: 0.05 };

it('reads an even decay to the check', () => {
  // 0.3 + 5.7 exp(−t / 3) falls to 1 at t = 3 ln (5.7 / 0.7) = 6.29; four checks were seen, the last at t = 3.
  const found = forecast(lawOf(6, 0.3, 3, 4), LITTLE)!;
  expect(found.checks).toBeGreaterThan(2.3);
  expect(found.checks).toBeLessThan(4.3);
  expect(found.interval![0]).toBeLessThanOrEqual(3.29);
  expect(found.interval![1]).toBeGreaterThanOrEqual(3.29);
  expect(found.neverOdds).toBeLessThan(0.3);
});

it('is not misled by one check that missed the fracture', () => {
  const levels = lawOf(8, 3, 1.5, 9).map((level, t) => (t === 6 ? 0 : level));
  expect(forecast(levels, LEVEL_NOISE.fracture)!.checks).toBeNull();
});

it('says that a level that stopped above the limit will not clear, and where it stopped', () => {
  const found = forecast(lawOf(8, 3, 1.5, 9), LITTLE)!;
  expect(found.neverOdds).toBeGreaterThan(0.99);
  expect(found.checks).toBeNull();
  expect(found.interval).toBeNull();
  expect(found.floor).toBeGreaterThan(2.7);
  expect(found.floor).toBeLessThan(3.3);
});

it('says so of a floor far higher than most', () => {
  const found = forecast(lawOf(14, 8, 2, 9), LEVEL_NOISE.fracture)!;
  expect(found.neverOdds).toBeGreaterThan(WILL_NOT_CLEAR);
  expect(found.floor).toBeGreaterThan(6);
});

it('says so of a level that never moved at all', () => {
  expect(forecast([3, 3, 3, 3, 3, 3], LEVEL_NOISE.fracture)!.checks).toBeNull();
});

it('has nothing left to wait for once the level is within the limit', () => {
  expect(forecast(lawOf(5, 0, 1, 5), LITTLE)!.checks).toBeLessThan(0.2);
  expect(forecast([0, 0, 0], LEVEL_NOISE.fracture)!.checks).toBe(0);
});

it('knows beforehand that three stones of four clear, and hardly more after one far check', () => {
  // One reading far above every floor tells nothing of the floor.
  expect(forecast([40], LEVEL_NOISE.fracture)!.neverOdds).toBeCloseTo(0.25, 1);
});

it('is the less sure the noisier the levels are', () => {
  const levels = lawOf(6, 0, 3, 4);
  const width = (fresh: number) => {
    const [low, high] = forecast(levels, { kept: 0, fresh })!.interval!;
    return high - low;
  };
  expect(width(0.2)).toBeGreaterThan(width(0.05));
  expect(forecast(lawOf(8, 3, 1.5, 9), LEVEL_NOISE.pit)!.neverOdds).toBeLessThan(
    forecast(lawOf(8, 3, 1.5, 9), LITTLE)!.neverOdds,
  );
});

it('leaves a floor near the limit open when the noise is kept, and decides it when it is new at each check', () => {
  // Root of 1.4 is 1.18: one standard deviation of 0.2 above the limit, 4.5 of the mean over a dozen checks.
  const levels = lawOf(6, 1.4, 1, 12);
  const fresh = forecast(levels, { kept: 0, fresh: 0.1 })!.neverOdds;
  const kept = forecast(levels, { kept: 0.2, fresh: 0.1 })!.neverOdds;
  expect(fresh).toBeGreaterThan(0.9);
  expect(kept).toBeLessThan(fresh - 0.1);
});

it('gives an interval around its middle, and odds between 0 and 1, for any levels', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 1, maxLength: 10 }),
      (levels) => {
        const { checks, interval, neverOdds } = forecast(levels, LEVEL_NOISE.fracture)!;
        expect(neverOdds).toBeGreaterThanOrEqual(0);
        expect(neverOdds).toBeLessThanOrEqual(1);
        expect(checks === null).toBe(interval === null);
        if (checks === null || interval === null) return;
        expect(interval[0]).toBeGreaterThanOrEqual(0);
        expect(interval[0]).toBeLessThanOrEqual(checks);
        expect(interval[1]).toBeGreaterThanOrEqual(checks);
      },
    ),
    { numRuns: 200 },
  );
});

it('says nothing about a stone that was never checked', () => {
  expect(forecast([], LEVEL_NOISE.fracture)).toBeNull();
});
