import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Mask } from '../../src/image/raster';
import { highlightPlace } from '../../src/measure/highlightPlace';
import { normalize, type Vector } from '../../src/optics/vector';
import { drawMask } from '../helpers/drawMask';

const SIDE = 161;
const MIDDLE = 80;

/** An ellipse of half-axes `long` and `short`, its long axis turned left from the x axis. */
function ellipse(long: number, short: number, turnDeg: number): Mask {
  const turn = (turnDeg * Math.PI) / 180;
  const data = Uint8Array.from({ length: SIDE * SIDE }, (_, i) => {
    const x = (i % SIDE) - MIDDLE;
    const y = MIDDLE - Math.floor(i / SIDE);
    const along = x * Math.cos(turn) + y * Math.sin(turn);
    const across = -x * Math.sin(turn) + y * Math.cos(turn);
    return (along / long) ** 2 + (across / short) ** 2 <= 1 ? 1 : 0;
  });
  return { width: SIDE, height: SIDE, data };
}

const offset = (mask: Mask, half: Vector) => {
  const { row, column } = highlightPlace(mask, half);
  return { right: column - MIDDLE, up: MIDDLE - row };
};

it('is the middle of the stone under a lamp beside the camera', () => {
  const { row, column, radiusPx } = highlightPlace(drawMask('.....', '.###.', '.###.', '.###.'), [0, 0, 1]);
  expect([row, column]).toEqual([2, 2]);
  expect(radiusPx).toBeCloseTo(Math.sqrt(9 / Math.PI), 12);
});

it('is where the closed form of the flattened ball has it', () => {
  // On x²/R² + y²/R² + z²/(cR)² = 1 the normal is h at (R²hx, R²hy, c²R²hz) / √(R²hx² + R²hy² + c²R²hz²).
  const half = normalize([0.3, 0.2, 0.8]);
  const [r, c] = [60, 0.75];
  const reach = Math.hypot(half[0], half[1], c * half[2]);
  const { right, up } = offset(ellipse(r, r, 0), half);
  expect(right).toBeCloseTo((r * half[0]) / reach, 0);
  expect(up).toBeCloseTo((r * half[1]) / reach, 0);
});

it('is R·h on a stone seen edge-on to the half-vector', () => {
  // With no part of h to the camera the height of the stone has no say: a ball and a flat stone agree.
  const { right, up } = offset(ellipse(60, 60, 0), normalize([3, 4, 0]));
  expect(right / 60).toBeCloseTo(0.6, 1);
  expect(up / 60).toBeCloseTo(0.8, 1);
});

const turn = fc.integer({ min: 0, max: 359 });
const tilt = fc.double({ min: -0.6, max: 0.6, noNaN: true });

it('lies opposite when the light comes from opposite, on a stone turned any way', () => {
  fc.assert(
    fc.property(turn, tilt, tilt, (turnDeg, x, y) => {
      const mask = ellipse(70, 40, turnDeg);
      const one = offset(mask, normalize([x, y, 1]));
      const other = offset(mask, normalize([-x, -y, 1]));
      expect(one.right).toBeCloseTo(-other.right, 6);
      expect(one.up).toBeCloseTo(-other.up, 6);
    }),
    { numRuns: 20 },
  );
});

it('turns with stone and light together', () => {
  fc.assert(
    fc.property(turn, tilt, tilt, (turnDeg, x, y) => {
      const straight = offset(ellipse(70, 40, 0), normalize([x, y, 1]));
      const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
      const turned = offset(ellipse(70, 40, turnDeg), normalize([cos * x - sin * y, sin * x + cos * y, 1]));
      expect(Math.abs(turned.right - (cos * straight.right - sin * straight.up))).toBeLessThan(0.7);
      expect(Math.abs(turned.up - (sin * straight.right + cos * straight.up))).toBeLessThan(0.7);
    }),
    { numRuns: 20 },
  );
});

it('stays on the stone', () => {
  fc.assert(
    fc.property(turn, tilt, tilt, (turnDeg, x, y) => {
      const mask = ellipse(70, 40, turnDeg);
      const { row, column } = highlightPlace(mask, normalize([x, y, 1]));
      expect(mask.data[Math.round(row) * SIDE + Math.round(column)]).toBe(1);
    }),
    { numRuns: 20 },
  );
});
