import { expect, it } from 'vitest';
import { checkByScene } from '../../src/analysis/checkByScene';
import { correctRig } from '../../src/analysis/correctRig';
import type { RigScene } from '../../src/analysis/report';
import { inventedRig, inventedScene } from '../helpers/inventedRig';

const kept = inventedRig();
const scene = inventedScene();
const corrected = (part: Partial<RigScene>) => {
  const now = { ...scene, ...part };
  return correctRig(kept, now, checkByScene(now, { ...kept, scene }));
};
const dimmed = (ratio: number) => scene.tray.map(([r, g, b]) => [ratio * r, ratio * g, ratio * b] as const);

it('leaves a rig that holds as it is', () => {
  const { rig, radianceSd, isMoved } = corrected({});
  expect(rig).toEqual(kept);
  expect(radianceSd).toBeCloseTo(0.03, 9);
  expect(isMoved).toBe(false);
});

it('takes the light of the tray for that of the highlight, less surely the more it changed', () => {
  const { rig, radianceSd } = corrected({ tray: dimmed(0.5) });
  expect(rig.lampRadiance).toBeCloseTo(7.5, 9);
  expect(radianceSd).toBeGreaterThan(corrected({ tray: dimmed(0.8) }).radianceSd);
  expect(corrected({ tray: dimmed(0.05) })).toMatchObject({
    radianceSd: Math.LN2,
    rig: { lampRadiance: 15 },
  });
});

// Gaussian blurs add in quadrature: 0.6² + (1³ − 0.6²) = 1.
it('adds the blur that came on top', () => {
  expect(corrected({ edgeBlurPx: 1 }).rig.blurPx).toBeCloseTo(1, 9);
  expect(corrected({ edgeBlurPx: 0.4 }).rig.blurPx).toBeCloseTo(0.6, 9);
});

it('scales with a photo of the same shape made smaller, and reads no gloss from it', () => {
  const { rig, isMoved } = corrected({ widthPx: 900, heightPx: 600, edgeBlurPx: 0.3 });
  expect(rig.mmPerPx).toBeCloseTo(0.2, 9);
  expect(rig.blurPx).toBeCloseTo(0.3, 9);
  expect(isMoved).toBe(true);
  expect(corrected({ widthPx: 900 }).rig.mmPerPx).toBe(0.1);
});

it('reads no gloss under a moved lamp', () => {
  expect(corrected({ shadow: { ...scene.shadow!, turnDeg: 0 } }).isMoved).toBe(true);
});

it('trusts a rig saved without a scene to one stop only', () => {
  const { scene: _, ...old } = kept;
  expect(correctRig(old, scene, null)).toEqual({ rig: old, radianceSd: Math.LN2, isMoved: false });
});
