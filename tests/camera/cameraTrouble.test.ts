import { expect, it } from 'vitest';
import { cameraTrouble } from '../../src/camera/cameraTrouble';
import { frameSize } from '../../src/camera/frameSize';
import { rigInFrame } from '../../src/camera/rigInFrame';
import { camera } from '../../src/texts/english/camera';
import { camera as kamera } from '../../src/texts/german/camera';
import { inventedRig } from '../helpers/inventedRig';

it('knows the errors of opening a camera by their names', () => {
  const named = (name: string) => cameraTrouble(new DOMException('', name));
  expect(named('NotAllowedError')).toBe('denied');
  expect(named('NotFoundError')).toBe('no-camera');
  expect(named('NotReadableError')).toBe('in-use');
  expect(named('NotSupportedError')).toBe('not-offered');
  expect(named('SomethingElse')).toBe('broken');
  expect(cameraTrouble('a word')).toBe('broken');
});

it.each([camera.troubles, kamera.troubles])('has a sentence for each', (troubles) => {
  for (const sentence of Object.values(troubles)) expect(sentence).toMatch(/^[A-Z].*\.$/);
});

it('reduces frames to 1280 × 720, upright or lying, and never enlarges', () => {
  expect(frameSize(4096, 3072)).toEqual({ widthPx: 960, heightPx: 720 });
  expect(frameSize(1080, 1920)).toEqual({ widthPx: 720, heightPx: 1280 });
  expect(frameSize(3840, 1000)).toEqual({ widthPx: 1280, heightPx: 333 });
  expect(frameSize(640, 480)).toEqual({ widthPx: 640, heightPx: 480 });
});

it('carries a remembered rig into the frame, by the size of the photo it came from', () => {
  const rig = inventedRig();
  const thenPx = Math.max(rig.scene!.widthPx, rig.scene!.heightPx);
  expect(rigInFrame(rig, 9999, thenPx / 4).mmPerPx).toBeCloseTo(4 * rig.mmPerPx, 12);
  expect(rigInFrame(rig, 9999, thenPx / 4).blurPx).toBeCloseTo(rig.blurPx / 4, 12);
  const { scene: _, ...old } = rig;
  expect(rigInFrame(old, 3000, 1000).mmPerPx).toBeCloseTo(3 * rig.mmPerPx, 12);
});
