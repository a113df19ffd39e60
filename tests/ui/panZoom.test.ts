import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  clampView,
  fittedSize,
  LARGEST_ZOOM,
  panBy,
  photoPlace,
  WHOLE_PHOTO,
  zoomAbout,
} from '../../src/ui/tray/panZoom';

const stage = { width: 400, height: 300 };
const photo = { width: 800, height: 400 };

it('fits a wide photo to the width of the stage', () => {
  expect(fittedSize(stage, photo)).toEqual({ width: 400, height: 200 });
  expect(photoPlace(WHOLE_PHOTO, stage, photo)).toEqual({ width: 400, height: 200, left: 0, top: 50 });
});

it('keeps the touched place of the photo under the finger while enlarging', () => {
  const at = { x: 100, y: 150 };
  const before = photoPlace(WHOLE_PHOTO, stage, photo);
  const after = photoPlace(zoomAbout(WHOLE_PHOTO, 3, at, stage, photo), stage, photo);
  expect((at.x - after.left) / after.width).toBeCloseTo((at.x - before.left) / before.width, 9);
  expect((at.y - after.top) / after.height).toBeCloseTo((at.y - before.top) / before.height, 9);
});

it('moves the photo with the finger, and stops at its edge', () => {
  const near = zoomAbout(WHOLE_PHOTO, 2, { x: 200, y: 150 }, stage, photo);
  const moved = photoPlace(panBy(near, 30, 0, stage, photo), stage, photo);
  expect(moved.left).toBeCloseTo(photoPlace(near, stage, photo).left + 30, 9);
  expect(photoPlace(panBy(near, 5000, 0, stage, photo), stage, photo).left).toBeCloseTo(0, 9);
});

it('never leaves an empty band that the photo could cover, whatever is done', () => {
  const any = fc.double({ min: -2, max: 3, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), any, any, (zoom, x, y) => {
      const view = clampView({ zoom, x, y }, stage, photo);
      const { left, top, width, height } = photoPlace(view, stage, photo);
      expect(view.zoom).toBeGreaterThanOrEqual(1);
      expect(view.zoom).toBeLessThanOrEqual(LARGEST_ZOOM);
      expect(left).toBeLessThanOrEqual(1e-6 + Math.max(0, (stage.width - width) / 2));
      expect(left + width).toBeGreaterThanOrEqual(Math.min(stage.width, (stage.width + width) / 2) - 1e-6);
      expect(top).toBeLessThanOrEqual(1e-6 + Math.max(0, (stage.height - height) / 2));
      expect(top + height).toBeGreaterThanOrEqual(Math.min(stage.height, (stage.height + height) / 2) - 1e-6);
    }),
  );
});
