import { expect, it } from 'vitest';
import type { SkinReport } from '../../src/analysis/report';
import { exampleRow } from './exampleRow';
import { skinLines, skinScores } from './glossSkin';

const trueWaves = (slopeDeg: number, wavelengthMm = 1) => ({
  wavelengthMm,
  slope: Math.tan((slopeDeg * Math.PI) / 180),
});
const said = (slopeDeg: number | null, patches = 0): SkinReport => ({
  waviness: {
    slopeDeg,
    slopeLowDeg: (slopeDeg ?? 0) / 1.5,
    slopeHighDeg: (slopeDeg ?? 1) * 1.5,
    wavelengthMm: slopeDeg && 1,
    longestMm: 1.5,
  },
  dullPatches: Array.from({ length: patches }, () => ({ row: 0, column: 0, areaMm2: 1, share: 0 })),
});

it('holds slopes against the true ones', () => {
  const scores = skinScores([
    exampleRow({ trueWaves: trueWaves(1), skin: said(1.2) }),
    exampleRow({ trueWaves: trueWaves(0.5), skin: said(0.25) }),
    exampleRow({ trueWaves: trueWaves(2), skin: said(2.2) }),
    exampleRow({ trueWaves: trueWaves(2, 3), skin: said(null) }),
  ]);
  expect([scores.wavy, scores.tellable, scores.seen]).toEqual([4, 3, 3]);
  expect(scores.medianRatio).toBeCloseTo(1.1, 12);
  expect(scores.coverage).toBeCloseTo(2 / 3, 12);
  expect(scores.ranks).toBeCloseTo(1, 12);
});

it('counts false waves and false patches, and only where there was something to read', () => {
  const blurred: SkinReport = { waviness: null, dullPatches: [] };
  const scores = skinScores([
    exampleRow({ trueWaves: null, skin: said(0.4) }),
    exampleRow({ trueWaves: null, skin: said(null, 1) }),
    exampleRow({ trueWaves: null, skin: blurred }),
    exampleRow({ trueWaves: null, skin: null }),
    exampleRow({ pitsInHighlight: 2, skin: said(null, 2) }),
    exampleRow({ pitsInHighlight: 1, skin: said(null) }),
  ]);
  expect([scores.fitted, scores.traced, scores.smooth, scores.falseWaves]).toEqual([5, 4, 4, 1]);
  expect([scores.pitted, scores.pittedFound, scores.sound, scores.falsePatches]).toEqual([2, 1, 3, 1]);
});

it('has nothing to say of rows saved before skins were read', () => {
  expect(skinLines([exampleRow(), exampleRow()])).toEqual([]);
});
