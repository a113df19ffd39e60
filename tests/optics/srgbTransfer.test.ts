import fc from 'fast-check';
import { expect, it } from 'vitest';
import { linearFromSrgb, SRGB_8BIT_TO_LINEAR, srgbFromLinear } from '../../src/optics/srgbTransfer';

it('keeps black black and white white', () => {
  expect(linearFromSrgb(0)).toBe(0);
  expect(linearFromSrgb(1)).toBe(1);
  expect(srgbFromLinear(0)).toBe(0);
  expect(srgbFromLinear(1)).toBeCloseTo(1, 12);
});

it('decodes a half to the printed linear value', () => {
  // IEC 61966-2-1 formula worked by hand: ((0.5 + 0.055) / 1.055)^2.4 = 0.21404.
  expect(linearFromSrgb(0.5)).toBeCloseTo(0.21404, 5);
});

it('joins its straight and its curved part at the standard threshold', () => {
  // IEC 61966-2-1: 0.04045 encoded is 0.0031308 linear.
  expect(linearFromSrgb(0.04045)).toBeCloseTo(0.0031308, 7);
  expect(linearFromSrgb(0.04045001)).toBeCloseTo(linearFromSrgb(0.04045), 6);
});

it('undoes itself', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (v) => {
      expect(srgbFromLinear(linearFromSrgb(v))).toBeCloseTo(v, 5);
    }),
  );
});

it('holds the same values in its 8-bit table, rising', () => {
  expect(SRGB_8BIT_TO_LINEAR).toHaveLength(256);
  for (let code = 1; code < 256; code++) {
    expect(SRGB_8BIT_TO_LINEAR[code]).toBeCloseTo(linearFromSrgb(code / 255), 6);
    expect(SRGB_8BIT_TO_LINEAR[code]).toBeGreaterThan(SRGB_8BIT_TO_LINEAR[code - 1]!);
  }
});
