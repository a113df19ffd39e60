import { expect, it } from 'vitest';
import type { Raster } from '../../src/image/raster';
import { sharpestCircle } from '../../src/measure/sharpestCircle';

const BALL = { row: 70, column: 75, radiusPx: 40 };

/** A tray with a dark ball on it: the ball's dark middle in a paler ring, and its shadow beside it. */
function drawn(middleRadiusPx: number): Raster {
  const [width, height] = [150, 140];
  const data = Float32Array.from({ length: width * height }, (_, i) => {
    const [down, right] = [Math.floor(i / width) - BALL.row, (i % width) - BALL.column];
    const fromMiddle = Math.hypot(down, right);
    if (fromMiddle < middleRadiusPx) return 0.01;
    if (fromMiddle < BALL.radiusPx) return 0.05;
    const fromShadow = Math.hypot(down - 18, right - 18);
    return fromShadow < BALL.radiusPx ? 0.06 : 0.3;
  });
  return { width, height, channels: 1, data };
}

it('moves a circle that holds the ball and its shadow to the ball', () => {
  const rough = { row: BALL.row + 8, column: BALL.column + 8, radiusPx: 46 };
  const found = sharpestCircle(drawn(0), rough);
  expect(Math.hypot(found.row - BALL.row, found.column - BALL.column)).toBeLessThan(4);
  expect(Math.abs(found.radiusPx / BALL.radiusPx - 1)).toBeLessThan(0.06);
});

it('keeps to the rim where the horizon mirrored in the glass has the clearer edge all around', () => {
  const found = sharpestCircle(drawn(32), BALL);
  expect(Math.abs(found.radiusPx / BALL.radiusPx - 1)).toBeLessThan(0.06);
});
