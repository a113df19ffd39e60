import { expect, it } from 'vitest';
import { frameAdvice } from '../../src/camera/frameAdvice';
import { frameChecks } from '../../src/camera/frameChecks';
import type { Preview } from '../../src/camera/preview';
import { camera } from '../../src/texts/english/camera';
import { camera as kamera } from '../../src/texts/german/camera';
import { inventedPreview } from './inventedPreview';

const SHOT_PX = 4000;
const checksOf = (but: Partial<Preview>, shotPx = SHOT_PX) => frameChecks(inventedPreview(but), shotPx);
const adviceOf = (but: Partial<Preview>, shotPx = SHOT_PX) => {
  const preview = inventedPreview(but);
  return frameAdvice(preview, frameChecks(preview, shotPx), preview.stones);
};

const NO_BALL = { ball: null, lampClipped: null, blurPx: null, mmPerPx: null, stones: null } as const;

it('asks for the photo when all is well', () => {
  expect(checksOf({})).toEqual({ ball: 'good', exposure: 'good', focus: 'good', scale: 'good' });
  expect(adviceOf({})).toBe('ready');
});

it('names one thing at a time, the one that hides the others first', () => {
  expect(adviceOf({ ...NO_BALL, refusal: 'too-dark' })).toBe('too-dark');
  expect(adviceOf({ ...NO_BALL, refusal: 'out-of-focus' })).toBe('out-of-focus');
  expect(adviceOf({ ...NO_BALL, refusal: 'no-ball' })).toBe('no-ball');
  expect(adviceOf({ lampClipped: 0.5, blurPx: 2, secondLight: true })).toBe('too-bright');
  expect(adviceOf({ blurPx: 2, secondLight: true })).toBe('out-of-focus');
  expect(adviceOf({ secondLight: true, lampPartly: true })).toBe('second-light');
  expect(adviceOf({ lampPartly: true, stones: null })).toBe('lamp-partly');
  expect(adviceOf({ stones: null })).toBe('outlining');
  expect(adviceOf({ stones: [] })).toBe('no-stone');
  const cut = [{ outline: [], cutOff: true }];
  expect(adviceOf({ stones: [...inventedPreview().stones!, ...cut] })).toBe('stone-cut-off');
});

it('judges size by the photo that would be taken, not by the frame', () => {
  // 1280 px of frame at 1 mm are 1 px/mm there; at 4000 px 3.1, at 6000 px 4.7, and four are needed.
  expect(checksOf({ mmPerPx: 1 }).scale).toBe('bad');
  expect(adviceOf({ mmPerPx: 1 })).toBe('too-far');
  expect(checksOf({ mmPerPx: 1, blurPx: 0.1 }, 6000).scale).toBe('good');
});

it('does not tell the focus from a ball seen too small, nor from none', () => {
  expect(checksOf({ mmPerPx: 1 }).focus).toBe('unknown');
  expect(checksOf(NO_BALL)).toEqual({ ball: 'bad', exposure: 'unknown', focus: 'unknown', scale: 'unknown' });
});

it('allows blur that only the reduced frame has', () => {
  expect(checksOf({ blurPx: 0.45, mmPerPx: 0.5 }).focus).toBe('good');
  expect(checksOf({ blurPx: 0.6, mmPerPx: 0.5 }).focus).toBe('bad');
  expect(checksOf({ blurPx: 0.6, mmPerPx: 0.2 }).focus).toBe('good');
});

it('does without a ball when none is wanted, and goes by the whole picture', () => {
  const without = { ...NO_BALL, ballWanted: false, mmPerPx: 0.2, stones: inventedPreview().stones };
  expect(checksOf(without)).toEqual({ ball: null, exposure: 'good', focus: 'good', scale: 'good' });
  expect(adviceOf(without)).toBe('ready');
  expect(adviceOf({ ...without, clipped: 0.02 })).toBe('picture-too-bright');
});

it.each([
  [camera.advice, 70],
  [kamera.advice, 78],
])('says each thing in one short sentence', (advice, most) => {
  for (const sentence of Object.values(advice)) {
    expect(sentence).toMatch(/^[A-Z].*[.…]$/);
    expect(sentence.length, sentence).toBeLessThanOrEqual(most);
    expect(sentence).not.toMatch(/\. [A-Z]/);
  }
});
