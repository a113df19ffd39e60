import { expect, it } from 'vitest';
import { stoneHighlight } from '../../src/measure/stoneHighlight';
import type { Vector } from '../../src/optics/vector';
import { plain } from '../helpers/drawScene';
import { drawStone } from '../helpers/drawStone';

// A matte stone with one round grain of mineral, neutral in color, at a place where a highlight may lie.
it.each([
  { albedo: 0.8, radius: 0.07 },
  { albedo: 0.8, radius: 0.15 },
  { albedo: 0.4, radius: 0.15 },
])('takes a pale grain of albedo $albedo and radius $radius for no highlight', ({ albedo, radius }) => {
  for (const [u, v] of [
    [-0.12, 0.36],
    [0.4, -0.3],
  ] as const) {
    const colorAt = ([x, y]: Vector) => plain(Math.hypot(x - u, y - v) < radius ? albedo : 0.05)();
    const { stone, mask, light } = drawStone({ alpha: 0.7, colorAt });
    expect(stoneHighlight(stone, mask, light)).toBeNull();
  }
});

it('lets a satin highlight stand', () => {
  const { stone, mask, light } = drawStone({ alpha: 0.12, colorAt: plain(0.05) });
  expect(stoneHighlight(stone, mask, light)).not.toBeNull();
});
