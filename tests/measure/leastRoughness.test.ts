import { expect, it } from 'vitest';
import { leastRoughness } from '../../src/measure/leastRoughness';
import { fresnelReflectance } from '../../src/optics/fresnelReflectance';
import { plain } from '../helpers/drawScene';
import { drawStone } from '../helpers/drawStone';

function boundOn(alpha: number, color = plain(0.3, 0.1, 0.05)): number {
  const { stone, mask, light } = drawStone({ alpha, colorAt: color });
  const amplitude = light.lampRadiance * fresnelReflectance(1.54, light.half[2]);
  return leastRoughness(stone, mask, light.sourceSlope)(amplitude);
}

it('is never above the truth, and tells matte from mirror', () => {
  for (const alpha of [0.02, 0.08, 0.2, 0.5]) expect(boundOn(alpha)).toBeLessThan(alpha);
  expect(boundOn(0.02)).toBe(0);
  expect(boundOn(0.5)).toBeGreaterThan(0.15);
});

it('says less about a white stone than about a dark one', () => {
  expect(boundOn(0.5, plain(0.8, 0.8, 0.8))).toBeLessThan(boundOn(0.5, plain(0.05, 0.05, 0.05)));
});

it('follows f = a² / (a² + α²) on an even patch, twice the light taken for safety', () => {
  const stone = { width: 9, height: 9, channels: 3, data: new Float32Array(243).fill(0.1) } as const;
  const mask = { width: 9, height: 9, data: new Uint8Array(81).fill(1) };
  // f = 2 · 0.1 / 1 = 0.2, so α = a √(1 / 0.2 − 1) = 2 a.
  expect(leastRoughness(stone, mask, 0.05)(1)).toBeCloseTo(0.1, 6);
});
