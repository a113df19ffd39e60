import { expect, it } from 'vitest';
import { cielab } from '../../src/optics/cielab';

// Primaries of sRGB under D65, as scikit-image 0.19 (skimage.color.rgb2lab) prints them to two digits.
it.each([
  [
    [1, 0, 0],
    [53.24, 80.09, 67.2],
  ],
  [
    [0, 1, 0],
    [87.73, -86.18, 83.18],
  ],
  [
    [0, 0, 1],
    [32.3, 79.19, -107.86],
  ],
  [
    [1, 1, 1],
    [100, 0, 0],
  ],
  [
    [0, 0, 0],
    [0, 0, 0],
  ],
] as const)('gives %j the lightness and color %j', (light, lab) => {
  cielab(light).forEach((value, k) => {
    expect(Math.abs(value - lab[k]!)).toBeLessThan(0.06);
  });
});

// CIE 15:2004: L* of 18.42 % luminance is 50.
it('puts middle gray in the middle', () => {
  expect(cielab([0.18419, 0.18419, 0.18419])[0]).toBeCloseTo(50, 1);
});

it('is continuous where the cube root ends', () => {
  const edge = (24 / 116) ** 3;
  const at = (y: number) => cielab([y, y, y])[0];
  expect(at(edge + 1e-9) - at(edge - 1e-9)).toBeLessThan(1e-4);
});
