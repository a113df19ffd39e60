import fc from 'fast-check';
import { expect, it } from 'vitest';
import { perceivedGloss } from '../../src/optics/perceivedGloss';

it('is the formula of Pellacini, Ferwerda and Greenberg 2000', () => {
  // A surface that mirrors 4 % (n = 1.5) on a body of 19.3 %: c = ∛0.1365 − ∛0.0965 = 0.51488 − 0.45868; d = 1 − 0.07.
  const { contrast, distinctness } = perceivedGloss(0.07, 1.5, 0.193);
  expect(contrast).toBeCloseTo(0.5149 - 0.4587, 4);
  expect(distinctness).toBeCloseTo(0.93, 12);
});

it('is the cube root of the mirrored share on black', () => {
  expect(perceivedGloss(0, 1.5, 0).contrast).toBeCloseTo(0.342, 3);
});

const share = fc.double({ min: 0, max: 1, noNaN: true });
const index = fc.double({ min: 1, max: 2.5, noNaN: true });

it('never has more contrast on a lighter body, nor less with a higher index', () => {
  fc.assert(
    fc.property(share, share, index, index, (a, b, n, m) => {
      const contrast = (body: number, of: number) => perceivedGloss(0.05, of, body).contrast;
      expect(contrast(Math.max(a, b), n)).toBeLessThanOrEqual(contrast(Math.min(a, b), n) + 1e-12);
      expect(contrast(a, Math.max(n, m))).toBeGreaterThanOrEqual(contrast(a, Math.min(n, m)) - 1e-12);
    }),
  );
});

it('never looks more distinct or more contrasted when it is rougher', () => {
  fc.assert(
    fc.property(share, share, share, (a, b, body) => {
      const smooth = perceivedGloss(Math.min(a, b), 1.54, body);
      const rough = perceivedGloss(Math.max(a, b), 1.54, body);
      expect(rough.distinctness).toBeLessThanOrEqual(smooth.distinctness);
      expect(rough.contrast).toBeLessThanOrEqual(smooth.contrast);
    }),
  );
});

it('refuses a body that sends back more light than falls on it, and a negative roughness', () => {
  expect(() => perceivedGloss(0.1, 1.5, 1.2)).toThrow("The body's reflectance must lie in 0 to 1, not 1.2.");
  expect(() => perceivedGloss(-0.1, 1.5, 0.2)).toThrow('The roughness must be 0 or more, not -0.1.');
});
