import { expect, it } from 'vitest';
import {
  curvature,
  EVEN_CURVATURE,
  type LobeOptics,
  type LobeShape,
  lobePicture,
  turningAway,
} from '../../src/measure/highlightModel';
import golden from '../golden/measure.json';
import { largestDifference } from '../helpers/largestDifference';

/** Lobes are drawn in 32-bit floats. */
const EXACT_TO = 1e-6;

const even = (alpha: number, slopePerPx: number, middle: number): LobeShape => ({
  row: middle,
  column: middle,
  mean: Math.log(slopePerPx),
  stretch: 0,
  skew: 0,
  alpha,
  change: EVEN_CURVATURE,
});
const sharp = (sourceSlope: number): LobeOptics => ({
  sourceSlope,
  lampTurnRad: null,
  blurPx: 0,
  half: null,
  oversampling: 1,
});
const square = (side: number) => ({ width: side, height: side, stepPx: 1 });

it('is a² / (a² + α²) high at the center', () => {
  for (const [alpha, a] of [
    [0.02, 0.05],
    [0.05, 0.05],
    [0.3, 0.05],
  ] as const) {
    const lobe = lobePicture(square(21), even(alpha, 0.004, 10), sharp(a));
    expect(lobe[10 * 21 + 10]).toBeCloseTo(a ** 2 / (a ** 2 + alpha ** 2), 6);
    expect(Math.max(...lobe)).toBe(lobe[10 * 21 + 10]);
  }
});

it('falls off as α² a² / u⁴ far from the lamp', () => {
  // There the GGX slope density α² / (π (α² + u²)²) is even over the lamp's disc, π a² (Walter et al. 2007, eq. 33).
  const [alpha, a, u] = [0.01, 0.02, 0.4];
  const lobe = lobePicture(
    { width: 41, height: 1, stepPx: 1 },
    { ...even(alpha, 0.01, 0), column: 0 },
    sharp(a),
  );
  expect(lobe[40]! / ((alpha * a) ** 2 / u ** 4)).toBeCloseTo(1, 1);
});

it('is a sharp disc of the lamp on a mirror, of area π a² / det K', () => {
  const shape = { ...even(1e-4, 0.005, 20), stretch: 0.3, skew: 0.1 };
  const lobe = lobePicture(square(41), shape, { ...sharp(0.05), oversampling: 3 });
  const [kxx, kxy, kyy] = curvature(shape);
  const area = (Math.PI * 0.05 ** 2) / (kxx * kyy - kxy * kxy);
  expect(lobe.reduce((sum, share) => sum + share, 0) / area).toBeCloseTo(1, 2);
  expect(lobe[20 * 41 + 20]).toBeCloseTo(1, 3);
  expect(lobe[0]).toBeLessThan(1e-3);
});

// Source: SciPy 1.10 linalg.expm and ndimage.gaussian_filter over a summed disc, tests/golden/measure.py.
it("gives SciPy's curvature and blurred picture", () => {
  const { shape, sourceSlope, blurPx, size, lobe } = golden.lobePicture;
  const drawn = { ...shape, change: EVEN_CURVATURE };
  const [kxx, kxy, kyy] = curvature(drawn);
  expect(largestDifference([kxx, kxy, kxy, kyy], golden.lobePicture.curvature)).toBeLessThan(1e-12);
  const optics = { sourceSlope, lampTurnRad: null, blurPx, half: null, oversampling: 3 };
  const margin = 5;
  const side = size + 2 * margin;
  const at = { ...drawn, row: drawn.row + margin, column: drawn.column + margin };
  const wide = lobePicture(square(side), at, optics);
  const inside = lobe.map((_, i) => wide[(Math.floor(i / size) + margin) * side + (i % size) + margin]!);
  expect(largestDifference(inside, lobe)).toBeLessThan(golden.tolerance.lobe);
});

it('turns with the curvature: a quarter turn swaps rows and columns', () => {
  const shape = { ...even(0.03, 0.008, 10), row: 8, column: 11, stretch: 0.4, skew: 0.2 };
  const turned = { ...shape, row: shape.column, column: 20 - shape.row, stretch: -0.4, skew: -0.2 };
  const optics = { ...sharp(0.04), blurPx: 0.7, oversampling: 2 };
  const [one, other] = [lobePicture(square(21), shape, optics), lobePicture(square(21), turned, optics)];
  const back = Array.from(one, (_, i) => other[(i % 21) * 21 + 20 - Math.floor(i / 21)]!);
  expect(largestDifference(one, back)).toBeLessThan(EXACT_TO);
});

it('depends on slopes, not on pixels: half the picture, twice the curvature', () => {
  const one = lobePicture(square(21), even(0.03, 0.008, 10), sharp(0.04));
  const other = lobePicture({ ...square(21), stepPx: 2 }, even(0.03, 0.004, 10), sharp(0.04));
  expect(largestDifference(one, [...other])).toBeLessThan(EXACT_TO);
});

it('loses its light evenly as the surface turns away', () => {
  // A slope of 1 per pixel is 45°: cos 45°, and √5 / 5 at a slope of 2.
  const cosines = turningAway({ width: 3, height: 1, stepPx: 1 }, { ...even(0.1, 1, 0) });
  expect(largestDifference(cosines, [1, Math.SQRT1_2, 1 / Math.sqrt(5)])).toBeLessThan(1e-12);
});
