import { expect, it } from 'vitest';
import { liveRig } from '../../src/camera/liveRig';
import { inventedRig } from '../helpers/inventedRig';
import { inventedPreview } from './inventedPreview';

const rig = { ...inventedRig(), mmPerPx: 0.2, blurPx: 1.5 };

it('is not known without a ball', () => {
  expect(liveRig(inventedPreview(), 4000, true)).toBeNull();
});

it('has the pixels of the photo, and of a sharp frame the blur of a sharp photo', () => {
  const live = liveRig(inventedPreview({ rig }), 3840, true);
  expect(live).toMatchObject({ light: rig.light, lampRadiance: rig.lampRadiance, blurPx: 0.8 });
  expect(live?.mmPerPx).toBeCloseTo(0.2 / 3, 9);
});

it('is as sharp as the frame where that is sharper still', () => {
  const sharper = { ...rig, blurPx: 0.2 };
  expect(liveRig(inventedPreview({ rig: sharper }), 2560, true)?.blurPx).toBeCloseTo(0.4, 9);
});

it('keeps a visible blur, in pixels of the photo', () => {
  expect(liveRig(inventedPreview({ rig }), 2560, false)?.blurPx).toBe(3);
});

it('never makes the pixels of a photo larger than those of the frame', () => {
  expect(liveRig(inventedPreview({ rig }), 640, true)?.mmPerPx).toBe(0.2);
});
