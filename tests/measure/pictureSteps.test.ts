import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { blurWide } from '../../src/measure/blurWide';
import { circleFit } from '../../src/measure/circleFit';
import { sampleColor, samplePixel } from '../../src/measure/samplePixel';
import { solidity } from '../../src/measure/solidity';
import golden from '../golden/outlines.json';
import { drawMask } from '../helpers/drawMask';
import { drawRaster } from '../helpers/drawRaster';

const points = golden.circle.points as [number, number][];
const near = { row: 28, column: 27, radiusPx: 11 };

it('reads between pixels, and the nearest one outside', () => {
  const raster = drawRaster([0, 2], [4, 6]);
  expect(samplePixel(raster, 0.5, 0.5)).toBe(3);
  expect(samplePixel(raster, -3, 9)).toBe(2);
});

// Source: SciPy's map_coordinates, tests/golden/outlines.py.
it('interpolates as SciPy does', () => {
  const { width, height, cost } = golden.flood;
  const gray: Raster = { width, height, channels: 1, data: Float32Array.from(cost) };
  const color: Raster = {
    width,
    height,
    channels: 3,
    data: Float32Array.from(cost.flatMap((v) => [v, 0, 2 * v])),
  };
  golden.samples.places.forEach(([row, column], i) => {
    const expected = golden.samples.values[i]!;
    expect(samplePixel(gray, row!, column!)).toBeCloseTo(expected, 5);
    expect(sampleColor(color, row!, column!)[0]).toBeCloseTo(expected, 5);
    expect(sampleColor(color, row!, column!)[2]).toBeCloseTo(2 * expected, 5);
  });
});

// Source: SciPy's gaussian_filter, tests/golden/outlines.py.
it('blurs widely within a hundredth of the exact blur', () => {
  const { width, height, data, sigma, blurred } = golden.wide;
  blurWide(data, width, height, sigma).forEach((value, i) => {
    expect(Math.abs(value - blurred[i]!)).toBeLessThan(0.01);
  });
});

it('keeps an even picture even', () => {
  for (const value of blurWide(new Array(900).fill(0.3), 30, 30, 12)) expect(value).toBeCloseTo(0.3, 6);
});

// Source: scikit-image's CircleModel, tests/golden/outlines.py.
it('fits the circle that scikit-image fits', () => {
  const fit = circleFit(points, near)!;
  expect(Math.abs(fit.row - golden.circle.row)).toBeLessThan(0.02);
  expect(Math.abs(fit.column - golden.circle.column)).toBeLessThan(0.02);
  expect(Math.abs(fit.radiusPx - golden.circle.radius)).toBeLessThan(0.02);
  expect(fit.onCircle).toBe(1);
});

it('is not drawn away by points that lie elsewhere', () => {
  const stray = points.map((point, i): [number, number] => (i % 4 === 0 ? [point[0] + 5, point[1]] : point));
  const fit = circleFit(stray, near)!;
  expect(Math.abs(fit.radiusPx - golden.circle.radius)).toBeLessThan(0.1);
  expect(fit.onCircle).toBeLessThan(0.85);
});

it('finds no circle in four points, nor in points on one spot', () => {
  expect(circleFit(points.slice(0, 4), near)).toBeNull();
  expect(
    circleFit(
      Array.from({ length: 9 }, () => [1, 1] as const),
      near,
    ),
  ).toBeNull();
});

it('calls a square solid and an L less so', () => {
  expect(solidity(drawMask('###', '###'))).toBe(1);
  expect(solidity(drawMask('#..', '#..', '###'))).toBeCloseTo(5 / 7, 6);
  expect(solidity(drawMask('...'))).toBe(1);
});

// Source: SciPy's ConvexHull, tests/golden/outlines.py.
it('takes the hull that SciPy takes', () => {
  expect(solidity({ ...golden.blob, data: Uint8Array.from(golden.blob.data) })).toBeCloseTo(
    golden.solidity,
    5,
  );
});
