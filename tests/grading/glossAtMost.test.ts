import { expect, it } from 'vitest';
import { glossAtMost } from '../../src/grading/glossAtMost';
import { glossUnits } from '../../src/optics/glossUnits';

it('is the gloss of the least roughness', () => {
  const most = glossAtMost({ byIndex: [{ n: 1.4, alphaAtLeast: 0.2 }] }, 'agate');
  // Agate's index goes up to about 1.55, and gloss grows with it.
  expect(most).toBeGreaterThan(glossUnits(0.2, 1.52, 60));
  expect(most).toBeLessThan(glossUnits(0.2, 1.57, 60));
});

it('allows a perfect polish where the bound is zero', () => {
  // 95.7 gloss units at 60° for a perfect surface of n = 1.540: Fresnel, as in ISO 2813.
  expect(glossAtMost({ byIndex: [{ n: 1.4, alphaAtLeast: 0 }] }, 'agate')).toBeGreaterThan(92);
});

it('falls as the bound rises', () => {
  const at = (alphaAtLeast: number) => glossAtMost({ byIndex: [{ n: 1.54, alphaAtLeast }] }, null);
  expect([0.3, 0.2, 0.1, 0.05].map(at)).toEqual([0.3, 0.2, 0.1, 0.05].map(at).sort((a, b) => a - b));
});

it('takes the bound of the next lower index', () => {
  const byIndex = [
    { n: 1.4, alphaAtLeast: 0.1 },
    { n: 1.6, alphaAtLeast: 0.3 },
  ];
  expect(glossAtMost({ byIndex }, 'agate')).toBeCloseTo(
    glossAtMost({ byIndex: byIndex.slice(0, 1) }, 'agate'),
    9,
  );
});
