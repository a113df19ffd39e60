import fc from 'fast-check';
import { expect, it } from 'vitest';
import { forecast, LEVEL_NOISE, WILL_NOT_CLEAR } from '../../src/grading/forecast';

/** Levels of the grinding law without noise. */
const lawOf = (start: number, floor: number, tau: number, checks: number) =>
  Array.from({ length: checks }, (_, t) => floor + (start - floor) * Math.exp(-t / tau));

it('reads an even decay to the check', () => {
  // 6 exp(−t / 3) falls to 1 at t = 3 ln 6 = 5.4; four checks were seen, the last at t = 3.
  const found = forecast(lawOf(6, 0, 3, 4), 0.05)!;
  expect(found.checks).toBeGreaterThan(1.4);
  expect(found.checks).toBeLessThan(3.6);
  expect(found.interval![0]).toBeLessThanOrEqual(2.4);
  expect(found.interval![1]).toBeGreaterThanOrEqual(2.4);
  expect(found.neverOdds).toBeLessThan(0.3);
});

it('says that a level that stopped above the limit will not clear, and where it stopped', () => {
  const found = forecast(lawOf(8, 3, 1.5, 9), 0.1)!;
  expect(found.neverOdds).toBeGreaterThan(WILL_NOT_CLEAR);
  expect(found.checks).toBeNull();
  expect(found.interval).toBeNull();
  expect(found.floor).toBeGreaterThan(2);
  expect(found.floor).toBeLessThan(4.1);
});

it('has nothing left to wait for once the level is within the limit', () => {
  expect(forecast(lawOf(5, 0, 1, 5), 0.05)!.checks).toBeLessThan(0.2);
});

it('is the less sure the noisier the levels are', () => {
  const levels = lawOf(6, 0, 3, 4);
  const width = (noise: number) => {
    const [low, high] = forecast(levels, noise)!.interval!;
    return high - low;
  };
  expect(width(LEVEL_NOISE.fracture)).toBeGreaterThan(width(0.05));
  expect(forecast(lawOf(8, 3, 1.5, 9), LEVEL_NOISE.pit)!.neverOdds).toBeLessThan(
    forecast(lawOf(8, 3, 1.5, 9), 0.1)!.neverOdds,
  );
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
    { numRuns: 40 },
  );
});

it('says nothing about a stone that was never checked', () => {
  expect(forecast([], 0.2)).toBeNull();
});
