import { expect, it } from 'vitest';
import type { StoneCrop } from '../../src/analysis/stoneCrop';
import { INDEX_KNOTS, stoneGloss } from '../../src/analysis/stoneGloss';
import { plain } from '../helpers/drawScene';
import { drawStone } from '../helpers/drawStone';

function gloss(alpha: number) {
  const { stone, mask, light } = drawStone({ alpha, colorAt: plain(0.3, 0.1, 0.05) });
  // The crop lies at row 200, column 100 of a photo of the same resolution.
  const crop: StoneCrop = { stone, mask, factor: 1, toPhoto: (row, column) => [row + 200, column + 100] };
  return stoneGloss(crop, light);
}

const satin = gloss(0.08).highlight!;

it('states the roughness for each refractive index, rising, with an interval around each', () => {
  expect(satin.byIndex.map(({ n }) => n)).toEqual([...INDEX_KNOTS]);
  for (const { alpha, alphaLow, alphaHigh } of satin.byIndex) {
    expect(alphaLow).toBeLessThan(alpha);
    expect(alphaHigh).toBeGreaterThan(alpha);
    expect(alphaHigh).toBeLessThanOrEqual(1);
  }
});

it('takes the same light for a rougher surface where a perfect polish would mirror more', () => {
  const alphas = satin.byIndex.map(({ alpha }) => alpha);
  expect(alphas).toEqual([...alphas].sort((a, b) => a - b));
});

it('is within a fifth of the truth at the index the stone was drawn with', () => {
  const drawn = satin.byIndex.find(({ n }) => n === 1.54)!;
  expect(Math.abs(drawn.alpha / 0.08 - 1)).toBeLessThan(0.2);
});

it('says where in the photo the highlight lies', () => {
  // Up and to the left of the middle of the stone, at row 259.5, column 171.5, as the lamp stands at 120°.
  expect(satin.row).toBeGreaterThan(230);
  expect(satin.row).toBeLessThan(255);
  expect(satin.column).toBeGreaterThan(140);
  expect(satin.column).toBeLessThan(170);
});

it('says how light a stone it is', () => {
  // Luminance of the drawn color: 0.2126 · 0.3 + 0.7152 · 0.1 + 0.0722 · 0.05 = 0.139.
  expect(satin.bodyReflectance).toBeGreaterThan(0.11);
  expect(satin.bodyReflectance).toBeLessThan(0.19);
});

it('gives a profile to be drawn: as many places as values, falling outward', () => {
  const { distance, measured, model } = satin.profile;
  expect([measured.length, model.length]).toEqual([distance.length, distance.length]);
  expect(distance.length).toBeGreaterThan(8);
  expect(measured[0]!).toBeGreaterThan(3 * measured[measured.length - 1]!);
});

it('gives a matte stone no number but the roughness that it has at least', () => {
  const { highlight, bound } = gloss(0.7);
  expect(highlight).toBeNull();
  for (const { alphaAtLeast } of bound!.byIndex) {
    expect(alphaAtLeast).toBeGreaterThan(0.1);
    expect(alphaAtLeast).toBeLessThan(0.7);
  }
});
