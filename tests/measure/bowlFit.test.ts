import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { bowlBasis } from '../../src/measure/bowlBasis';
import { bowlFit } from '../../src/measure/bowlFit';

/** A bowl exactly as the fit describes it, in a tilted plane. */
function drawn(dark: number, right: number, up: number): Raster {
  const [side, radius] = [61, 8];
  const data = Float32Array.from({ length: side * side }, (_, i) => {
    const [x, y] = [(i % side) - 30, 30 - Math.floor(i / side)];
    const t = Math.min(1, Math.max(0, (Math.hypot(x, y) / radius - 0.7) / 0.45));
    const bowl = 1 - t * t * (3 - 2 * t);
    return -1.2 + 0.01 * x - 0.02 * y - bowl * (dark + (right * x + up * y) / radius);
  });
  return { width: side, height: side, channels: 1, data };
}

it('gives back the bowl that was drawn, whatever the plane it lies in', () => {
  const coefficient = fc.double({ min: -1, max: 1, noNaN: true });
  const anyBowl = fc.property(coefficient, coefficient, coefficient, (dark, right, up) => {
    const fit = bowlFit(drawn(dark, right, up), bowlBasis(8), 30, 30, [0.6, 0.8]);
    expect(fit.dark).toBeCloseTo(dark, 3);
    expect(fit.fall).toBeCloseTo(0.6 * right + 0.8 * up, 3);
    expect(fit.crossFall).toBeCloseTo(0.6 * up - 0.8 * right, 3);
  });
  fc.assert(anyBowl);
});

it('explains a hole under this lamp whole and one lit from the other side not', () => {
  const hole = drawn(0.3, 0.3, 0.4);
  expect(bowlFit(hole, bowlBasis(8), 30, 30, [0.6, 0.8]).explained).toBeGreaterThan(0.95);
  expect(bowlFit(hole, bowlBasis(8), 30, 30, [-0.6, -0.8]).explained).toBeLessThan(0.8);
});

it('gains nothing over a plane on a plane', () => {
  expect(bowlFit(drawn(0, 0, 0), bowlBasis(8), 30, 30, [1, 0]).gain).toBeLessThan(1e-3);
});

it('gains as much as a flat spot on a flat spot', () => {
  const fit = bowlFit(drawn(0.5, 0, 0), bowlBasis(8), 30, 30, [1, 0]);
  expect(fit.flatGain).toBeCloseTo(fit.gain, 4);
});

it('repeats the edge pixels beyond the picture', () => {
  const even: Raster = { width: 5, height: 5, channels: 1, data: new Float32Array(25).fill(-2) };
  expect(bowlFit(even, bowlBasis(4), 0, 0, [1, 0]).rest).toBe(0);
});
