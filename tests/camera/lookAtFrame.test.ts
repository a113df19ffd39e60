import sharp, { type Sharp } from 'sharp';
import { beforeAll, expect, it } from 'vitest';
import type { FrameKnowledge } from '../../src/camera/preview';
import type { Photo } from '../../src/image/photo';
import { type OpenCv, openOpenCv } from '../../src/vision/openCv';
import { lookAtFrame } from '../../src/worker/lookAtFrame';

const TRAY = 'sample-images/polished-tray.jpg';
const LOOK: FrameKnowledge = { ballMm: 16, rig: null, ball: null, outline: false, checkLamp: true };
/** The ball in a frame of 1080 × 720, from the truth file of the sample (1800 × 1200). */
const BALL = { row: 125.8 * 0.6, column: 1120.33 * 0.6, radiusPx: 73.63 * 0.6 };

let cv: OpenCv;
let tray: Photo;
beforeAll(async () => {
  cv = await openOpenCv();
  tray = await frameOf(sharp(TRAY).resize(1080, 720));
});

async function frameOf(picture: Sharp): Promise<Photo> {
  const { data, info } = await picture.ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { widthPx: info.width, heightPx: info.height, rgba: new Uint8ClampedArray(data) };
}

it('finds ball, scale and every stone when asked for outlines', () => {
  const preview = lookAtFrame(tray, { ...LOOK, outline: true }, cv);
  expect(Math.abs(preview.ball!.row - BALL.row)).toBeLessThan(0.5);
  expect(Math.abs(preview.ball!.column - BALL.column)).toBeLessThan(0.5);
  expect(preview.mmPerPx! / (16 / 2 / BALL.radiusPx)).toBeCloseTo(1, 2);
  expect(preview.stones).toHaveLength(12);
  expect(preview).toMatchObject({ refusal: null, tooDark: false, lampClipped: 0 });
});

it('finds the ball again where it was, and everywhere when it is gone from there', () => {
  const near = lookAtFrame(tray, { ...LOOK, ball: BALL }, cv);
  const elsewhere = lookAtFrame(tray, { ...LOOK, ball: { ...BALL, row: 600, column: 200 } }, cv);
  for (const { ball } of [near, elsewhere]) expect(ball!.radiusPx / BALL.radiusPx).toBeCloseTo(1, 2);
  expect(near.stones).toBeNull();
});

it('has a state for a frame without a ball, one out of focus and one in the dark', async () => {
  const without = await frameOf(sharp(TRAY).extract({ left: 0, top: 600, width: 900, height: 600 }));
  expect(lookAtFrame(without, { ...LOOK, outline: true }, cv)).toMatchObject({
    ball: null,
    refusal: 'no-ball',
    stones: null,
  });
  const blurred = await frameOf(sharp(TRAY).resize(1080, 720).blur(6));
  expect(lookAtFrame(blurred, LOOK, cv).refusal).toBe('out-of-focus');
  const dark = await frameOf(sharp(TRAY).resize(1080, 720).linear(0.1, 0));
  expect(lookAtFrame(dark, LOOK, cv).tooDark).toBe(true);
});

it('tells a lamp washed out in the ball', async () => {
  const bright = await frameOf(sharp(TRAY).resize(1080, 720).linear(2.6, 0));
  expect(lookAtFrame(bright, LOOK, cv).lampClipped).toBeGreaterThan(0.2);
});

it('says something of the lamp only when asked', () => {
  const near = { ...LOOK, ball: BALL };
  expect(lookAtFrame(tray, near, cv)).toMatchObject({ secondLight: false, lampPartly: false });
  const unasked = lookAtFrame(tray, { ...near, checkLamp: false }, cv);
  expect(unasked).toMatchObject({ secondLight: null, lampPartly: null });
});
