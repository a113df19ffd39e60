import { expect, it } from 'vitest';
import { skinReport } from '../../src/analysis/skinReport';
import type { StoneCrop } from '../../src/analysis/stoneCrop';

/** A crop of half the photo's resolution, its corner at row 100, column 200 of the photo. */
const crop: StoneCrop = {
  stone: { width: 1, height: 1, channels: 3, data: new Float32Array(3) },
  mask: { width: 1, height: 1, data: new Uint8Array(1) },
  factor: 2,
  toPhoto: (row, column) => [100 + 2 * row, 200 + 2 * column],
};
const waves = { slope: Math.tan(Math.PI / 180), low: 0, high: 1, wavelengthPx: 10, longestPx: 30 };

it('tells slopes in degrees, lengths in millimeters and places in the photo', () => {
  const patch = { row: 5, column: 7, areaPx: 25, share: 0.1 };
  const report = skinReport({ waviness: waves, dullPatches: [patch] }, crop, 0.05);
  expect(report.waviness?.slopeDeg).toBeCloseTo(1, 12);
  expect(report.waviness?.slopeHighDeg).toBeCloseTo(45, 12);
  expect(report.waviness?.wavelengthMm).toBeCloseTo(1, 12);
  expect(report.waviness?.longestMm).toBeCloseTo(3, 12);
  expect(report.dullPatches).toEqual([
    { row: 110, column: 214, areaMm2: expect.closeTo(0.25, 12), share: 0.1 },
  ]);
});

it('keeps null for waves that are not seen, or cannot be', () => {
  const unseen = { ...waves, slope: null, wavelengthPx: null };
  const { waviness } = skinReport({ waviness: unseen, dullPatches: [] }, crop, 0.05);
  expect([waviness?.slopeDeg, waviness?.wavelengthMm]).toEqual([null, null]);
  expect(skinReport({ waviness: null, dullPatches: [] }, crop, 0.05)).toEqual({
    waviness: null,
    dullPatches: [],
  });
});
