import { expect, it } from 'vitest';
import { srgbFromDisplayP3 } from '../../src/image/srgbFromDisplayP3';

const converted = (...rgba: number[]) => {
  const pixels = Uint8ClampedArray.from(rgba);
  srgbFromDisplayP3(pixels);
  return [...pixels];
};

it('leaves every gray as it is', () => {
  for (let code = 0; code < 256; code++) {
    expect(converted(code, code, code, 255)).toEqual([code, code, code, 255]);
  }
});

it('gives the values of lcms2 for colors inside sRGB, to a code', () => {
  // libvips 8 with lcms2, `sharp(…).withIccProfile('p3')`, turns these sRGB colors into those Display P3 values.
  const pairs = [
    { p3: [185, 71, 58], srgb: [200, 60, 50] },
    { p3: [94, 158, 89], srgb: [70, 160, 80] },
    { p3: [64, 79, 174], srgb: [60, 80, 180] },
  ];
  for (const { p3, srgb } of pairs) {
    const given = converted(...p3, 255);
    expect(Math.max(...srgb.map((code, i) => Math.abs(code - (given[i] ?? 0))))).toBeLessThanOrEqual(1);
  }
});

it('clips what sRGB does not hold and keeps alpha', () => {
  expect(converted(0, 255, 0, 7)).toEqual([0, 255, 0, 7]);
  expect(converted(255, 0, 0, 255)).toEqual([255, 0, 0, 255]);
});
