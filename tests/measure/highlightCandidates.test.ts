import { expect, it } from 'vitest';
import type { Mask, Raster } from '../../src/image/raster';
import { highlightCandidates } from '../../src/measure/highlightCandidates';

const SIDE = 120;
const disc: Mask = {
  width: SIDE,
  height: SIDE,
  data: Uint8Array.from({ length: SIDE * SIDE }, (_, i) =>
    Math.hypot((i % SIDE) - 59.5, Math.floor(i / SIDE) - 59.5) < 55 ? 1 : 0,
  ),
};

/** A bell of a standard deviation on a dark stone with a little grain. */
function bell(row: number, column: number, sigmaPx: number, ground = 0.05): Raster {
  const data = Float32Array.from({ length: SIDE * SIDE }, (_, i) => {
    const distance = Math.hypot((i % SIDE) - column, Math.floor(i / SIDE) - row);
    return (
      ground + (0.002 * ((i * 7919) % 13)) / 13 + Math.exp((-distance * distance) / (2 * sigmaPx * sigmaPx))
    );
  });
  return { width: SIDE, height: SIDE, channels: 1, data };
}

it.each([1.5, 4, 10])(
  'has a bright spot of %s px among its candidates, in place and about as large',
  (sigmaPx) => {
    const fitting = highlightCandidates(bell(45, 70, sigmaPx), disc).filter(
      ({ row, column, radiusPx }) =>
        Math.hypot(row - 45, column - 70) < 0.5 * sigmaPx + 1.5 &&
        radiusPx > 0.5 * sigmaPx &&
        radiusPx < 3 * sigmaPx,
    );
    expect(fitting.length).toBeGreaterThan(0);
  },
);

it('finds the same spots in twice the light', () => {
  const light = bell(45, 70, 4, 0);
  const places = (raster: Raster) =>
    highlightCandidates(raster, disc)
      .slice(0, 1)
      .map(({ row, column }) => [row, column]);
  expect(places({ ...light, data: light.data.map((value) => 2 * value) })).toEqual(places(light));
});

it('makes no spot of the edge of the stone or of what lies beyond it', () => {
  // A bright tray around a stone of even radiance.
  const data = Float32Array.from(disc.data, (inside) => (inside ? 0.1 : 1));
  expect(
    highlightCandidates({ width: SIDE, height: SIDE, channels: 1, data }, disc).filter(
      (spot) => spot.contrast > 1e-6,
    ),
  ).toEqual([]);
});

it('names at most six', () => {
  const data = Float32Array.from({ length: SIDE * SIDE }, (_, i) => ((i * 48271) % 2147483647) / 2147483647);
  expect(
    highlightCandidates({ width: SIDE, height: SIDE, channels: 1, data }, disc).length,
  ).toBeLessThanOrEqual(6);
});

it('finds nothing on no stone', () => {
  expect(highlightCandidates(bell(45, 70, 4), { ...disc, data: disc.data.map(() => 0) })).toEqual([]);
});
