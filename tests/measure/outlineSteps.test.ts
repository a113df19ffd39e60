import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { simplifyOutline } from '../../src/measure/simplifyOutline';
import { outwardNormals, signedArea, smoothOutline } from '../../src/measure/smoothOutline';
import { snapOutline } from '../../src/measure/snapOutline';

type Point = [row: number, column: number];
const circle = (radius: number, count = Math.round(2 * Math.PI * radius)): Point[] =>
  Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return [50 + radius * Math.sin(angle), 50 + radius * Math.cos(angle)];
  });
const radiusOf = ([row, column]: readonly [number, number]) => Math.hypot(row - 50, column - 50);

/** A disc of one color on another, its edge blurred a little. */
function disc(radius: number, inside: number, outside: number): Raster {
  const data = Float32Array.from({ length: 3 * 100 * 100 }, (_, k) => {
    const i = Math.floor(k / 3);
    const share = 1 / (1 + Math.exp((radiusOf([Math.floor(i / 100), i % 100]) - radius) / 0.5));
    return outside + share * (inside - outside);
  });
  return { width: 100, height: 100, channels: 3, data };
}

it('knows the area of a square, and the sense it runs in', () => {
  const square: Point[] = [
    [0, 0],
    [0, 4],
    [4, 4],
    [4, 0],
  ];
  expect(signedArea(square)).toBe(16);
  expect(signedArea([...square].reverse())).toBe(-16);
});

it('points out of a shape, whichever way it runs', () => {
  for (const points of [circle(20), circle(20).reverse()]) {
    outwardNormals(points).forEach(([down, right], i) => {
      expect(down * (points[i]![0] - 50) + right * (points[i]![1] - 50)).toBeGreaterThan(19.9);
    });
  }
});

it('smooths a jagged circle toward its mean', () => {
  const jagged = circle(30).map(([row, column], i): Point => {
    const grown = 1 + (i % 2 ? 0.02 : -0.02);
    return [50 + (row - 50) * grown, 50 + (column - 50) * grown];
  });
  for (const point of smoothOutline(jagged, 2)) expect(Math.abs(radiusOf(point) - 30)).toBeLessThan(0.15);
});

it('leaves a triangle as it is', () => {
  expect(
    smoothOutline(
      [
        [0, 0],
        [0, 5],
        [5, 0],
      ],
      2,
    ),
  ).toEqual([
    [0, 0],
    [0, 5],
    [5, 0],
  ]);
});

it('moves an outline onto the edge from both sides, bright stone or dark', () => {
  for (const [inside, outside] of [
    [0.6, 0.05],
    [0.02, 0.4],
    [0.2, 0.25],
  ] as const) {
    for (const start of [28.2, 31.8]) {
      const points = circle(start, 188);
      const snapped = snapOutline(disc(30, inside, outside), points, outwardNormals(points));
      for (const point of snapped) expect(Math.abs(radiusOf(point) - 30)).toBeLessThan(0.4);
    }
  }
});

it('finds the same edge at twice the exposure', () => {
  const points = circle(31, 188);
  const once = snapOutline(disc(30, 0.3, 0.1), points, outwardNormals(points));
  expect(snapOutline(disc(30, 0.6, 0.2), points, outwardNormals(points))).toEqual(once);
});

it('stays where it is on an even picture', () => {
  const points = circle(20);
  expect(snapOutline(disc(30, 0.3, 0.3), points, outwardNormals(points))).toEqual(points);
});

it('leaves out the points of a straight side', () => {
  const square: Point[] = [
    [0, 0],
    [0, 2],
    [0, 4],
    [2, 4],
    [4, 4],
    [4, 2],
    [4, 0],
    [2, 0],
  ];
  expect(simplifyOutline(square, 0.1)).toEqual([
    [0, 0],
    [0, 4],
    [4, 4],
    [4, 0],
  ]);
});

it('keeps the area of any circle to what the tolerance allows', () => {
  fc.assert(
    fc.property(fc.double({ min: 5, max: 45, noNaN: true }), (radius) => {
      const points = circle(radius, 200);
      const simple = simplifyOutline(points, 0.2);
      expect(simple.length).toBeLessThan(200);
      expect(Math.abs(signedArea(simple)) / (Math.PI * radius ** 2)).toBeGreaterThan(1 - 0.45 / radius);
    }),
  );
});
