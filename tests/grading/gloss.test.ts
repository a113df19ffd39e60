import fc from 'fast-check';
import { expect, it } from 'vitest';
import { glossOf } from '../../src/grading/gloss';
import { MATERIAL_NAMES } from '../../src/grading/materials';
import { highlightOf } from '../helpers/measuredStone';

it('reads roughness between two indexes on a logarithmic line', () => {
  const byIndex = [
    { n: 1.5, alpha: 0.1, alphaLow: 0.1, alphaHigh: 0.1 },
    { n: 1.58, alpha: 0.4, alphaLow: 0.4, alphaHigh: 0.4 },
  ];
  expect(glossOf(byIndex, null).alpha).toBeCloseTo(0.2, 10);
});

it('gives the trial reading of a rough quartz-like surface', () => {
  // Trial of this project with path-traced surfaces, n = 1.54: α = 0.05 reads 5.5 at 20° and 32.9 at 60°.
  const gloss = glossOf(highlightOf(0.05).byIndex, null);
  expect(Math.abs(gloss.gu60 - 32.9)).toBeLessThan(1);
  expect(Math.abs(gloss.gu20 - 5.5)).toBeLessThan(1);
  expect(gloss.finish).toBe('satin');
});

it('names the published level and reads at all three angles', () => {
  // Independent integral, tests/golden/glossIntegral.json: α = 0.02, n = 1.54 reads 23.4, 65.7 and 63.3.
  const gloss = glossOf(highlightOf(0.02).byIndex, null);
  expect(gloss.gu20).toBeCloseTo(23.4, 0);
  expect(gloss.gu85).toBeCloseTo(63.3, 0);
  expect([gloss.finish, gloss.level]).toEqual(['semi-gloss', 'G5']);
});

it('holds a perfect polish against the ceiling of its mineral', () => {
  // ISO 2813 / ASTM D523: fluorite, n = 1.434, cannot read more than about 78.
  const fluorite = glossOf(highlightOf(1e-4).byIndex, 'fluorite');
  expect(fluorite.ceilingGu60).toBeLessThan(79);
  expect(fluorite.shareOfCeiling).toBeCloseTo(1, 2);
});

const roughness = fc.double({ min: 0.001, max: 0.9, noNaN: true });
const material = fc.constantFrom(null, ...MATERIAL_NAMES);

it('never shines more when it is rougher', () => {
  fc.assert(
    fc.property(roughness, roughness, material, (a, b, name) => {
      const smooth = glossOf(highlightOf(Math.min(a, b)).byIndex, name);
      const rough = glossOf(highlightOf(Math.max(a, b)).byIndex, name);
      expect(rough.gu60).toBeLessThanOrEqual(smooth.gu60);
      expect(rough.gu20).toBeLessThanOrEqual(smooth.gu20);
      expect(rough.shareOfCeiling).toBeLessThanOrEqual(smooth.shareOfCeiling);
    }),
  );
});

it('keeps every estimate inside its interval', () => {
  fc.assert(
    fc.property(roughness, material, (alpha, name) => {
      const gloss = glossOf(highlightOf(alpha).byIndex, name);
      expect(gloss.gu60Low).toBeLessThanOrEqual(gloss.gu60);
      expect(gloss.gu60High).toBeGreaterThanOrEqual(gloss.gu60);
      expect(gloss.shareOfCeilingLow).toBeLessThanOrEqual(gloss.shareOfCeiling);
      expect(gloss.shareOfCeilingHigh).toBeGreaterThanOrEqual(gloss.shareOfCeiling);
    }),
  );
});

it('is less sure of a stone of unknown material', () => {
  const known = glossOf(highlightOf(0.05).byIndex, 'agate');
  const unknown = glossOf(highlightOf(0.05).byIndex, null);
  expect(unknown.gu60High - unknown.gu60Low).toBeGreaterThan(known.gu60High - known.gu60Low);
});

it('holds the ends when the index lies outside', () => {
  const one = [{ n: 1.54, alpha: 0.1, alphaLow: 0.09, alphaHigh: 0.11 }];
  expect(glossOf(one, 'corundum').alpha).toBeCloseTo(0.1, 12);
});

it('refuses a highlight without a roughness', () => {
  expect(() => glossOf([], null)).toThrow(
    'A highlight needs its roughness for at least one refractive index.',
  );
});
