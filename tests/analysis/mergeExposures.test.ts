import sharp from 'sharp';
import { expect, it } from 'vitest';
import { mergeExposures } from '../../src/analysis/mergeExposures';
import { decodeFile } from '../../src/cli/decodeFile';
import { cropLinear } from '../../src/image/cropLinear';
import type { Photo } from '../../src/image/photo';
import type { Box, Raster } from '../../src/image/raster';
import golden from '../golden/exposures.json';
import { normalNoise } from '../helpers/normalNoise';
import { sCurve, shoot } from '../helpers/shoot';

async function decodeShot(png: string): Promise<Photo> {
  const { data } = await sharp(Buffer.from(png, 'base64'))
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return { widthPx: golden.widthPx, heightPx: golden.heightPx, rgba: new Uint8ClampedArray(data) };
}

const [brightest, ...darker] = await Promise.all(golden.shots.map(decodeShot));
const merged = mergeExposures([brightest!, ...darker]);

/** A sample photo taken for a scene of known light. */
const tray = await decodeFile('sample-images/polished-tray.jpg');

/** The scene's part in a box, as one shot sees it. */
const part = (box: Box): Raster => cropLinear(tray, box);

// The left half of the tray: ball not in it, so that the test is quick. Places differ by the shift.
const FRAME = { row: 20, column: 20, width: 900, height: 700 };
const moved = (down: number, right: number) => ({
  ...FRAME,
  row: FRAME.row - down,
  column: FRAME.column - right,
});

it('finds the ratios through a curve of another family than its own, the more so with levels in common', () => {
  const misses = merged.ratios.map((ratio, i) => Math.abs(ratio / golden.times[i]! - 1));
  expect(misses[0]).toBe(0);
  expect(misses[1]).toBeLessThan(0.015);
  expect(misses[2]).toBeLessThan(0.04);
});

// Source: OpenCV createCalibrateDebevec, which is told the ratios; see tests/golden/exposures.py.
it('finds the camera’s curve within 3 % of OpenCV’s', () => {
  const { linear } = merged.photo.merging!;
  for (let code = 40; code <= 232; code += 16) {
    const own = linear[code]! / linear[128]!;
    expect(Math.abs(own / (golden.response[code]! / golden.response[128]!) - 1)).toBeLessThan(0.03);
  }
});

it('restores the light of the scene, also beyond the first shot’s limit, better than OpenCV’s merging', () => {
  const misses = { own: [] as number[], theirs: [] as number[] };
  let beyond = 0;
  for (const { row, column, light, merged: theirs } of golden.places) {
    const own = cropLinear(merged.photo, { row, column, width: 1, height: 1 }).data;
    light.forEach((truth, c) => {
      if (truth < 0.05) return;
      if (truth > 1) beyond++;
      misses.own.push(Math.abs(own[c]! / truth - 1));
      misses.theirs.push(Math.abs(theirs[c]! / truth - 1));
    });
  }
  const middle = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1]!;
  expect(beyond).toBeGreaterThan(20);
  expect(middle(misses.own)).toBeLessThan(0.025);
  expect(middle(misses.own)).toBeLessThan(middle(misses.theirs));
});

it('restores clipped highlights on stones within 2 %, through an S-curve, noise and a camera that moved', () => {
  const camera = { curve: sCurve(0.5), noise: normalNoise(7) };
  const bright = shoot(part(FRAME), 4, camera);
  const dark = shoot(part(moved(5, -3)), 1, camera);
  const { photo, ratios } = mergeExposures([bright, dark]);
  expect(Math.abs(ratios[1]! / 0.25 - 1)).toBeLessThan(0.01);
  expect(photo.merging!.shots[0]!.placing.down).toBeCloseTo(5, 1);
  expect(photo.merging!.shots[0]!.placing.right).toBeCloseTo(-3, 1);
  const seen = cropLinear(photo, { row: 0, column: 0, width: 900, height: 700 }).data;
  const truth = part(FRAME).data.map((light) => 4 * light);
  const sums = [0, 0];
  truth.forEach((light, i) => {
    if (light < 1.1 || light > 3.6) return;
    sums[0]! += light;
    sums[1]! += seen[i]!;
  });
  expect(sums[0]).toBeGreaterThan(1000);
  expect(Math.abs(sums[1]! / sums[0]! - 1)).toBeLessThan(0.02);
});

it('refuses shots of different sizes', () => {
  const small = { ...brightest!, widthPx: golden.heightPx, heightPx: golden.widthPx };
  expect(() => mergeExposures([brightest!, small])).toThrow('not of one size');
});

it('refuses a shot of other stones, one in which stones were moved, and a camera moved far', () => {
  const here = shoot(part(FRAME), 1);
  const elsewhere = part({ ...FRAME, row: 480, column: 880 });
  const mixed = part(FRAME);
  // The lower half is another part of the tray.
  mixed.data.set(elsewhere.data.subarray(3 * 900 * 350), 3 * 900 * 350);
  for (const scene of [elsewhere, mixed, part({ ...FRAME, row: 120 })]) {
    expect(() => mergeExposures([here, shoot(scene, 0.4)])).toThrow('do not show the same scene');
  }
});
