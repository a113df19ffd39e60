import { expect, it } from 'vitest';
import { stoneSurface } from '../../src/measure/stoneSurface';
import { drawSkin, type Paint, PX_PER_MM, plainBlur, SIDE_PX } from '../helpers/drawSkin';

const dotted: Paint = (x, y) => (Math.sin(2 * x) * Math.sin(2 * y) > 0 ? [0.5, 0.3, 0.1] : [0.05, 0.1, 0.08]);

/** Standard deviation over the middle of the stone, away from edges of color. */
function spread(paint: Paint, field: 'logLight' | 'colorless'): number {
  const { color, mask } = drawSkin(paint);
  const { data } = stoneSurface(color, mask, 1 / PX_PER_MM, [1, 0], plainBlur)[field];
  const values: number[] = [];
  for (let row = 40; row < 120; row++) {
    for (let column = 40; column < 120; column++) values.push(data[row * SIDE_PX + column]!);
  }
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length);
}

it('takes off most of a pattern whose colors differ in hue', () => {
  expect(spread(dotted, 'colorless')).toBeLessThan(0.35 * spread(dotted, 'logLight'));
});

it('keeps a shade that has no hue of its own', () => {
  const shaded: Paint = (x, y) => (Math.hypot(x, y) < 0.7 ? [0.25, 0.15, 0.05] : [0.5, 0.3, 0.1]);
  expect(spread(shaded, 'colorless')).toBeGreaterThan(0.75 * spread(shaded, 'logLight'));
});
