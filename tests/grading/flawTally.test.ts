import { expect, it } from 'vitest';
import { flawTally } from '../../src/grading/flawTally';
import { fracture, measuredStone, pits } from '../helpers/measuredStone';

const half = { minFlawConfidence: 0.5 };

it('counts sure and doubtful flaws apart and leaves faint ones out', () => {
  const flaws = [...pits(2, 0.9), ...pits(1, 0.3), ...pits(4, 0.1), fracture(3), fracture(4)];
  const { sure, withDoubtful } = flawTally(measuredStone({ flaws }), half);
  expect(sure.pit).toEqual({ count: 2, largestMm: 0.5, totalMm: 1, usualWidthMm: null });
  expect(withDoubtful.pit.count).toBe(3);
  expect(sure.fracture).toEqual({ count: 2, largestMm: 4, totalMm: 7, usualWidthMm: null });
  expect(sure.chip).toEqual({ count: 0, largestMm: 0, totalMm: 0, usualWidthMm: null });
});

it('takes the outline for the surface when nothing was inspected', () => {
  expect(flawTally(measuredStone({ inspectedCm2: 0, areaMm2: 250 }), half).surfaceCm2).toBeCloseTo(2.5, 12);
  expect(flawTally(measuredStone({ inspectedCm2: 0, areaMm2: 0 }), half).surfaceCm2).toBeGreaterThan(0);
});
