import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type ShineFigures, shineFigures } from '../../src/grading/shineFigures';

it('gives a perfect polish every figure at its best', () => {
  const best = shineFigures(0, 1.567, 0);
  // ISO 2813: the standard's own glass reads 100 at each angle.
  for (const gu of [best.gu20, best.gu60, best.gu85]) expect(gu).toBeCloseTo(100, 1);
  for (const { percent } of best.imageClarity) expect(percent).toBeCloseTo(100, 6);
  expect(best.distinctnessOfImage).toBeCloseTo(100, 6);
  expect(best.haze).toBeCloseTo(0, 6);
  expect(best.haze30).toBeCloseTo(0, 6);
  expect(best.distinctness).toBe(1);
});

it('knows no contrast without the lightness of the stone', () => {
  expect(shineFigures(0.05, 1.54, null).contrast).toBeNull();
  expect(shineFigures(0.05, 1.54, 0).contrast).toBeGreaterThan(0.3);
});

/** Figures of which more is glossier. */
const FALLING: Readonly<Record<string, (figures: ShineFigures) => number>> = {
  gu20: ({ gu20 }) => gu20,
  gu60: ({ gu60 }) => gu60,
  gu85: ({ gu85 }) => gu85,
  'clarity, finest comb': ({ imageClarity }) => imageClarity[0]!.percent,
  'clarity, coarsest comb': ({ imageClarity }) => imageClarity.at(-1)!.percent,
  'distinctness of image': (figures) => figures.distinctnessOfImage,
  contrast: ({ contrast }) => contrast!,
  distinctness: ({ distinctness }) => distinctness,
};

it.each(Object.keys(FALLING))('is never glossier when it is rougher: %s', (name) => {
  const roughness = fc.double({ min: 0, max: 1, noNaN: true });
  const index = fc.double({ min: 1.4, max: 1.8, noNaN: true });
  fc.assert(
    fc.property(roughness, roughness, index, (a, b, n) => {
      const at = (alpha: number) => FALLING[name]!(shineFigures(alpha, n, 0.1));
      expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)) + 0.01);
    }),
    { numRuns: 40 },
  );
});

it('takes a roughness above 1 for 1 and refuses a negative one', () => {
  expect(shineFigures(1.5, 1.54, null)).toEqual(shineFigures(1, 1.54, null));
  expect(() => shineFigures(-0.1, 1.54, null)).toThrow('The roughness must be 0 or more, not -0.1.');
});
