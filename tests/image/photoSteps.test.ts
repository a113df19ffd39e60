import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boxAround } from '../../src/image/boxAround';
import { cropLinear, cropLuminance } from '../../src/image/cropLinear';
import { cropReduced } from '../../src/image/cropReduced';
import { fillPolygon } from '../../src/image/fillPolygon';
import { LUMINANCE_WEIGHTS, luminance } from '../../src/image/luminance';
import { maskWhere } from '../../src/image/maskWhere';
import type { Photo } from '../../src/image/photo';
import { shrinkPhoto } from '../../src/image/shrinkPhoto';
import { SRGB_8BIT_TO_LINEAR } from '../../src/optics/srgbTransfer';
import { showMask } from '../helpers/drawMask';

const photo: Photo = {
  widthPx: 7,
  heightPx: 5,
  rgba: Uint8ClampedArray.from({ length: 4 * 35 }, (_, i) => (i * 37) % 256),
};
const whole = { row: 0, column: 0, width: 7, height: 5 };

it('brings a crop to linear light', () => {
  const crop = cropLinear(photo, { row: 1, column: 2, width: 2, height: 1 });
  const at = 4 * (7 * 1 + 2);
  expect([...crop.data]).toEqual(
    [0, 1, 2, 4, 5, 6].map((k) => Math.fround(SRGB_8BIT_TO_LINEAR[photo.rgba[at + k]!]!)),
  );
});

it('refuses a crop that reaches outside', () => {
  expect(() => cropLinear(photo, { row: 0, column: 5, width: 3, height: 1 })).toThrow('reaches outside');
  expect(() => cropLuminance(photo, { row: 3, column: 0, width: 1, height: 3 })).toThrow('reaches outside');
});

it('reads the luminance of a crop as the weighted sum of its linear channels', () => {
  const box = { row: 1, column: 2, width: 4, height: 3 };
  const expected = luminance(cropLinear(photo, box));
  const { data, ...size } = cropLuminance(photo, box);
  expect(size).toEqual({ width: 4, height: 3, channels: 1 });
  data.forEach((value, i) => {
    expect(value).toBeCloseTo(expected.data[i]!, 6);
  });
});

it('averages light and not codes: black and white give half', () => {
  const stripes: Photo = {
    widthPx: 2,
    heightPx: 1,
    rgba: Uint8ClampedArray.of(0, 0, 0, 255, 255, 255, 255, 255),
  };
  const wide: Photo = {
    widthPx: 2,
    heightPx: 2,
    rgba: Uint8ClampedArray.of(...stripes.rgba, ...stripes.rgba),
  };
  expect([...shrinkPhoto(wide, 1).raster.data]).toEqual([0.5, 0.5, 0.5]);
});

it('shrinks by whole blocks, as the mean of the linear crop, and leaves the rest out', () => {
  const { raster, factor } = shrinkPhoto(photo, 4);
  expect([factor, raster.width, raster.height]).toEqual([2, 3, 2]);
  const reduced = cropReduced(photo, whole, 2);
  raster.data.forEach((value, i) => {
    expect(value).toBeCloseTo(reduced.data[i]!, 6);
  });
});

it('leaves a photo that is small enough as it is', () => {
  expect(shrinkPhoto(photo, 900).raster).toEqual(cropLinear(photo, whole));
  expect(cropReduced(photo, whole, 1)).toEqual(cropLinear(photo, whole));
});

// Source: IEC 61966-2-1 / ITU-R BT.709: the weights of relative luminance add up to 1.
it('gives white a luminance of 1, and each primary its weight', () => {
  const colors = {
    width: 4,
    height: 1,
    channels: 3,
    data: Float32Array.of(1, 1, 1, 1, 0, 0, 0, 1, 0, 0, 0, 1),
  } as const;
  const values = [...luminance(colors).data];
  [1, ...LUMINANCE_WEIGHTS].forEach((expected, i) => {
    expect(values[i]!).toBeCloseTo(expected, 6);
  });
});

it('lays a box around a center and cuts it off at the edge', () => {
  expect(boxAround({ row: 5, column: 5 }, 2, { width: 20, height: 20 })).toEqual({
    row: 3,
    column: 3,
    width: 5,
    height: 5,
  });
  expect(boxAround({ row: 0, column: 19 }, 2, { width: 20, height: 20 })).toEqual({
    row: 0,
    column: 17,
    width: 3,
    height: 3,
  });
});

it('keeps every box inside the picture', () => {
  const number = fc.double({ min: -50, max: 50, noNaN: true });
  fc.assert(
    fc.property(number, number, fc.double({ min: 0.1, max: 90, noNaN: true }), (row, column, reach) => {
      const box = boxAround({ row, column }, reach, { width: 30, height: 12 });
      expect(box.row >= 0 && box.column >= 0 && box.width >= 1 && box.height >= 1).toBe(true);
      expect(box.row + box.height <= 12 && box.column + box.width <= 30).toBe(true);
    }),
  );
});

it('fills a polygon by its pixel centers, holes by the even-odd rule', () => {
  const outer = [
    [-0.5, -0.5],
    [-0.5, 4.5],
    [4.5, 4.5],
    [4.5, -0.5],
  ] as const;
  const inner = [
    [0.5, 0.5],
    [3.5, 0.5],
    [3.5, 3.5],
    [0.5, 3.5],
  ] as const;
  expect(showMask(fillPolygon(inner, 5, 5))).toEqual(['.....', '.###.', '.###.', '.###.', '.....']);
  const ring = [...outer, outer[0], inner[0], ...inner.slice(1), inner[0], outer[0]] as const;
  expect(showMask(fillPolygon(ring, 5, 5))).toEqual(['#####', '#...#', '#...#', '#...#', '#####']);
});

it('fills nothing for two corners', () => {
  expect(
    fillPolygon(
      [
        [0, 0],
        [3, 3],
      ],
      4,
      4,
    ).data.some((inside) => inside),
  ).toBe(false);
});

it('draws the mask of a condition', () => {
  expect(showMask(maskWhere(3, 2, (i) => i % 2 === 0))).toEqual(['#.#', '.#.']);
});
