import fc from 'fast-check';
import { expect, it } from 'vitest';
import { flawTally } from '../../src/grading/flawTally';
import type { MeasuredFlaw } from '../../src/grading/measuredStone';
import { smoothness } from '../../src/grading/smoothness';
import { fracture, measuredStone, pits } from '../helpers/measuredStone';

function smoothnessOf(flaws: readonly MeasuredFlaw[]) {
  return smoothness(flawTally(measuredStone({ flaws }), { minFlawConfidence: 0.5 }));
}

it('is 100 without a flaw', () => {
  expect(smoothnessOf([]).score).toBe(100);
  expect(smoothnessOf([]).parts.map(({ why }) => why)).toContain('no pits seen');
});

it('takes off 63 % of the pit points at 1.5 mm of pit per cm²', () => {
  // By hand: 15 pits of 0.5 mm on 5 cm² are 1.5 mm per cm², so 50 · (1 − 1/e) are lost.
  const { score, parts } = smoothnessOf(pits(15));
  expect(score).toBeCloseTo(100 - 50 * (1 - Math.exp(-1)), 10);
  expect(parts[0]).toMatchObject({ kind: 'pit', most: 50, why: '15 pits, 7.5 mm across together, on 5 cm²' });
});

it('lets the parts explain the whole', () => {
  const { score, parts } = smoothnessOf([...pits(3), fracture(6)]);
  expect(100 - parts.reduce((sum, { lost }) => sum + lost, 0)).toBeCloseTo(score, 10);
});

const flaw = fc.record({
  kind: fc.constantFrom('pit' as const, 'fracture' as const, 'chip' as const, 'scratch' as const),
  diameterMm: fc.double({ min: 0, max: 20, noNaN: true }),
  confidence: fc.double({ min: 0, max: 1, noNaN: true }),
});

it('never rises with one more flaw, and stays within 0 to 100', () => {
  fc.assert(
    fc.property(fc.array(flaw), flaw, (flaws, more) => {
      const after = smoothnessOf([...flaws, more]).score;
      expect(after).toBeLessThanOrEqual(smoothnessOf(flaws).score + 1e-9);
      expect(after).toBeGreaterThanOrEqual(0);
    }),
  );
});
