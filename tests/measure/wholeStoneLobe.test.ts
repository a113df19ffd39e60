import { expect, it } from 'vitest';
import { wholeStoneLobe } from '../../src/measure/wholeStoneLobe';
import { fresnelReflectance } from '../../src/optics/fresnelReflectance';
import { plain } from '../helpers/drawScene';
import { drawStone } from '../helpers/drawStone';

function lobeOn(alpha: number, color = plain(0.3, 0.1, 0.05)) {
  const { stone, mask, light } = drawStone({ alpha, colorAt: color });
  const amplitude = light.lampRadiance * fresnelReflectance(1.54, light.half[2]);
  return wholeStoneLobe(stone, mask, light, amplitude)!;
}

it('reads wide lobes on an ellipsoid within a quarter', () => {
  for (const alpha of [0.15, 0.25]) {
    const { alpha: read, gain } = lobeOn(alpha);
    expect(Math.abs(Math.log(read / alpha))).toBeLessThan(Math.log(1.25));
    expect(gain).toBeGreaterThan(6);
  }
});

it('finds no lobe on a stone too rough for one', () => {
  expect(lobeOn(0.9, plain(0.5, 0.5, 0.5)).gain).toBeLessThan(6);
});

it('says where the lobe is and how it falls', () => {
  const { row, column, profile } = lobeOn(0.15);
  // Up and to the left of the middle, at row 59.5, column 71.5, as the lamp stands at 120°.
  expect(row).toBeLessThan(57);
  expect(column).toBeLessThan(70);
  expect(profile.measured[0]!).toBeGreaterThan(3 * profile.measured.at(-1)!);
});

it('is null when next to nothing of the stone is seen', () => {
  const { stone, mask, light } = drawStone({ alpha: 0.2, colorAt: plain(0.3, 0.3, 0.3) });
  const none = { ...mask, data: mask.data.map(() => 0) };
  expect(wholeStoneLobe(stone, none, light, 1)).toBeNull();
});
