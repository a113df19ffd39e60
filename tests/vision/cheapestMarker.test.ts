import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { cheapestMarker } from '../../src/vision/cheapestMarker';
import golden from '../golden/outlines.json';
import { drawRaster } from '../helpers/drawRaster';

it('meets on the dear pixels between two markers', () => {
  const cost = drawRaster([1, 1, 9, 1, 1, 1, 1]);
  expect([...cheapestMarker(cost, Int32Array.of(1, 0, 0, 0, 0, 0, 2))].filter((_, i) => i !== 2)).toEqual([
    1, 1, 2, 2, 2, 2,
  ]);
});

it('does not leak far through a gap in a wall', () => {
  const cost = drawRaster([1, 1, 9, 1, 1], [1, 1, 1, 1, 1], [1, 1, 9, 1, 1]);
  const labels = cheapestMarker(cost, Int32Array.of(0, 0, 0, 0, 2, 1, 0, 0, 0, 2, 0, 0, 0, 0, 2));
  expect([...labels].filter((_, i) => i % 5 === 3)).toEqual([2, 2, 2]);
});

// Source: SciPy's Dijkstra on the grid graph, tests/golden/outlines.py.
it('gives every pixel to the marker that SciPy finds nearest', () => {
  const { width, height, cost, markers, labels } = golden.flood;
  const raster: Raster = { width, height, channels: 1, data: Float32Array.from(cost) };
  expect([...cheapestMarker(raster, Int32Array.from(markers))]).toEqual(labels);
});

// Source: as above. One step that is a thousand million times as dear asks for the other kind of queue.
it('finds the same beside a step dearer than all others together', () => {
  const { width, height, cost, markers, labels } = golden.flood;
  const taller = [...cost, ...Array.from({ length: width }, () => 1e9)];
  const raster: Raster = { width, height: height + 1, channels: 1, data: Float32Array.from(taller) };
  const found = cheapestMarker(raster, Int32Array.from([...markers, ...new Array<number>(width).fill(0)]));
  expect([...found].slice(0, width * height)).toEqual(labels);
});

it('swaps with its markers', () => {
  const { width, height, cost, markers } = golden.flood;
  const raster: Raster = { width, height, channels: 1, data: Float32Array.from(cost) };
  const swapped = cheapestMarker(
    raster,
    Int32Array.from(markers, (m) => (m ? 4 - m : 0)),
  );
  expect([...swapped].map((m) => 4 - m)).toEqual([...cheapestMarker(raster, Int32Array.from(markers))]);
});

it('labels every pixel, whatever the costs, without its queue running over', () => {
  const picture = fc.integer({ min: 1, max: 9 }).chain((width) =>
    fc.record({
      width: fc.constant(width),
      cost: fc.array(fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1e6, noNaN: true })), {
        minLength: 8 * width,
        maxLength: 8 * width,
      }),
      start: fc.nat(8 * width - 1),
    }),
  );
  fc.assert(
    fc.property(picture, ({ width, cost, start }) => {
      const markers = new Int32Array(8 * width);
      markers[start] = 7;
      const raster: Raster = { width, height: 8, channels: 1, data: Float32Array.from(cost) };
      expect(cheapestMarker(raster, markers).every((label) => label === 7)).toBe(true);
    }),
  );
});

it('leaves everything unlabeled without a marker', () => {
  expect([...cheapestMarker(drawRaster([1, 1]), new Int32Array(2))]).toEqual([0, 0]);
});

it('refuses sizes that differ, and costs that are no costs', () => {
  expect(() => cheapestMarker(drawRaster([1, 1]), new Int32Array(3))).toThrow('must be of one size');
  for (const wrong of [-1, Number.NaN]) {
    expect(() => cheapestMarker(drawRaster([1, wrong]), Int32Array.of(1, 0))).toThrow('Every cost must be');
  }
});
