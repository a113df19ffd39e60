import { expect, it } from 'vitest';
import type { CompareWhat } from '../../src/compare/compareBy';
import { compareGroups } from '../../src/compare/compareGroups';
import type { StoneDigest } from '../../src/history/batchDigest';
import { plotAxis } from '../../src/ui/compare/plotAxis';
import { inventedDigests, inventedGloss } from '../compare/inventedDigest';

const axisOf = (stones: readonly StoneDigest[], what: CompareWhat, widthPx = 360) =>
  plotAxis(compareGroups(stones, 'material', what, new Map()).groups, what, widthPx);

const labels = (axis: ReturnType<typeof axisOf>) => axis.marks.map(({ label }) => label);

it('begins gloss at the even ten percent below the dullest stone and ends at the ceiling', () => {
  const axis = axisOf(
    inventedDigests([0.63, 0.9], (share) => ({ gloss: inventedGloss(share) })),
    'gloss',
  );
  expect(labels(axis)).toEqual(['60', '70', '80', '90', '100']);
  expect(axis.x(axis.ceiling!)).toBeCloseTo(344, 9);
});

it('begins gloss at nothing for a dull stone, and holds a stone above the ceiling', () => {
  const axis = axisOf(
    inventedDigests([0.05, 1.04], (share) => ({ gloss: inventedGloss(share) })),
    'gloss',
  );
  expect(labels(axis)).toEqual(['0', '20', '40', '60', '80', '100']);
  expect(axis.x(1.04)).toBeCloseTo(344, 9);
});

it('begins weeks at nothing', () => {
  expect(
    labels(
      axisOf(
        inventedDigests([21, 70], (coarseDays) => ({ coarseDays })),
        'coarse',
      ),
    ),
  ).toEqual(['0', '2', '4', '6', '8', '10']);
});

it('begins loss below nothing where a stone was measured longer than before', () => {
  const axis = axisOf(
    inventedDigests([20.6, 15], (last) => ({ lengthMm: [20, last] as const })),
    'size',
  );
  expect(axis.x(-0.03)).toBeCloseTo(16, 9);
  expect(labels(axis)).toContain('0');
});

it('marks fewer numbers where there is less room', () => {
  const stones = inventedDigests([0.1, 0.9], (share) => ({ gloss: inventedGloss(share) }));
  expect(axisOf(stones, 'gloss', 200).marks.length).toBeLessThan(axisOf(stones, 'gloss', 700).marks.length);
});
