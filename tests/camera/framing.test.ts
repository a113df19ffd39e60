import { expect, it } from 'vitest';
import { framedWith, NO_FRAMING, nextLook } from '../../src/camera/framing';
import type { Preview } from '../../src/camera/preview';
import { inventedPreview } from './inventedPreview';

const TRAY = { ballMm: 16, rig: null };
const SHOT_PX = 4000;
const at = (row: number, column: number) => ({ ball: { row, column, radiusPx: 40 } });
const after = (...previews: Partial<Preview>[]) =>
  previews.reduce((framing, but) => framedWith(framing, inventedPreview(but), SHOT_PX), NO_FRAMING);

it('follows the ball while it moves, and asks for outlines once it rests', () => {
  expect(nextLook(NO_FRAMING, TRAY)).toEqual({ ...TRAY, ball: null, outline: false });
  const moving = after({ ...at(300, 400), stones: null }, { ...at(300, 430), stones: null });
  expect(nextLook(moving, TRAY)).toEqual({ ...TRAY, ...at(300, 430), outline: false });
  const resting = framedWith(moving, inventedPreview({ ...at(302, 431), stones: null }), SHOT_PX);
  expect(nextLook(resting, TRAY)).toEqual({ ...TRAY, ...at(302, 431), outline: true });
});

it('keeps outlines while the ball stays, takes them away when it moves, and when it creeps', () => {
  const outlined = after(at(300, 400));
  const still = framedWith(outlined, inventedPreview({ ...at(303, 404), stones: null }), SHOT_PX);
  expect(still.stones).toBe(outlined.stones);
  expect(nextLook(still, TRAY).outline).toBe(false);
  const moved = framedWith(still, inventedPreview({ ...at(320, 404), stones: null }), SHOT_PX);
  expect(moved.stones).toBeNull();
  // Each step is small, the two together are not.
  const crept = framedWith(still, inventedPreview({ ...at(306, 408), stones: null }), SHOT_PX);
  expect(crept.stones).toBeNull();
});

it('moves outlines along with the ball while the camera moves, but asks for new ones before it says that all is well', () => {
  const stones = [{ outline: [[10, 20] as const, [30, 40] as const], cutOff: false }];
  const outlined = after({ ...at(300, 400), stones });
  const moved = framedWith(outlined, inventedPreview({ ...at(320, 390), stones: null }), SHOT_PX);
  expect(moved.shown?.[0]?.outline).toEqual([
    [30, 10],
    [50, 30],
  ]);
  expect(moved.stones).toBeNull();
  const on = framedWith(moved, inventedPreview({ ...at(330, 390), stones: null }), SHOT_PX);
  expect(on.shown?.[0]?.outline[0]).toEqual([40, 10]);
  expect(on.advice).toBe('outlining');
});

it('takes outlines away when the ball is lost, or seen from another distance', () => {
  const outlined = after(at(300, 400));
  const lost = framedWith(outlined, inventedPreview({ ball: null, stones: null }), SHOT_PX);
  expect(lost.shown).toBeNull();
  const nearer = { ball: { row: 320, column: 400, radiusPx: 46 }, stones: null };
  expect(framedWith(outlined, inventedPreview(nearer), SHOT_PX).shown).toBeNull();
});

it('outlines anew after a while, and now and then looks for the ball everywhere', () => {
  let framing = after(at(300, 400), at(300, 400));
  const asked: boolean[] = [];
  const searched: boolean[] = [];
  for (let look = 0; look < 60; look++) {
    const known = nextLook(framing, TRAY);
    asked.push(known.outline);
    searched.push(known.ball === null);
    framing = framedWith(
      framing,
      inventedPreview({ ...at(300, 400), stones: known.outline ? [] : null }),
      SHOT_PX,
    );
  }
  expect(asked.filter(Boolean)).toHaveLength(4);
  expect(searched.filter(Boolean)).toHaveLength(2);
});

it('outlines every frame when no ball tells whether the camera rests', () => {
  expect(nextLook(NO_FRAMING, { ballMm: null, rig: null }).outline).toBe(true);
});

it('changes the sentence only when two frames in a row call for it, but the first one at once', () => {
  const first = after({});
  expect(first.advice).toBe('ready');
  const once = framedWith(first, inventedPreview({ lampClipped: 0.5 }), SHOT_PX);
  expect(once.advice).toBe('ready');
  expect(framedWith(once, inventedPreview(), SHOT_PX).advice).toBe('ready');
  expect(framedWith(once, inventedPreview({ lampClipped: 0.6 }), SHOT_PX).advice).toBe('too-bright');
});
