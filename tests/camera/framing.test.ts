import { expect, it } from 'vitest';
import { CHECK_LAMP_EVERY, framedWith, NO_FRAMING, nextLook } from '../../src/camera/framing';
import type { Preview } from '../../src/camera/preview';
import { inventedPreview } from './inventedPreview';

const TRAY = { ballMm: 16, rig: null };
const SHOT_PX = 4000;
const at = (row: number, column: number) => ({ ball: { row, column, radiusPx: 40 } });
const after = (...previews: Partial<Preview>[]) =>
  previews.reduce((framing, but) => framedWith(framing, inventedPreview(but), SHOT_PX), NO_FRAMING);

it('follows the ball while it moves, and asks for outlines once it rests', () => {
  expect(nextLook(NO_FRAMING, TRAY)).toEqual({ ...TRAY, ball: null, outline: false, checkLamp: true });
  const moving = after({ ...at(300, 400), stones: null }, { ...at(300, 430), stones: null });
  expect(nextLook(moving, TRAY)).toEqual({ ...TRAY, ...at(300, 430), outline: false, checkLamp: false });
  const resting = framedWith(moving, inventedPreview({ ...at(302, 431), stones: null }), SHOT_PX);
  expect(nextLook(resting, TRAY)).toEqual({ ...TRAY, ...at(302, 431), outline: true, checkLamp: false });
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

/** Looks as often as told at a ball at rest, the sketch of each frame given by its number. */
function lookedAt(times: number, sketchOf: (look: number) => Preview['sketch']) {
  let framing = after({ ...at(300, 400), sketch: sketchOf(0) }, { ...at(300, 400), sketch: sketchOf(0) });
  const asked: number[] = [];
  let searched = 0;
  for (let look = 0; look < times; look++) {
    const known = nextLook(framing, TRAY);
    if (known.outline) asked.push(look);
    if (known.ball === null) searched++;
    const seen = { ...at(300, 400), stones: known.outline ? [] : null, sketch: sketchOf(look) };
    framing = framedWith(framing, inventedPreview(seen), SHOT_PX);
  }
  return { asked, searched };
}

it('outlines anew soon where something was moved, else after a while, and now and then looks for the ball everywhere', () => {
  const [still, moved] = [
    { width: 2, light: [0.4, 0.4, 0.3, 0.3] },
    { width: 2, light: [0.4, 0.4, 0.5, 0.1] },
  ];
  expect(lookedAt(60, () => still)).toEqual({ asked: [], searched: 2 });
  expect(lookedAt(70, () => still).asked).toEqual([60]);
  expect(lookedAt(30, (look) => (look < 5 ? still : moved)).asked).toEqual([12]);
  expect(lookedAt(30, (look) => (look < 20 ? still : moved)).asked).toEqual([21]);
});

it('without a ball outlines every frame that differs from the last one outlined, and keeps outlines meanwhile', () => {
  const tray = { ballMm: null, rig: null };
  const frame = (light: number, stones: Preview['stones'] = null) =>
    inventedPreview({
      ball: null,
      ballWanted: false,
      stones,
      sketch: { width: 2, light: [light, 0.1, 0.3, 1 - light] },
    });
  expect(nextLook(NO_FRAMING, tray).outline).toBe(true);
  const outlined = framedWith(NO_FRAMING, frame(0.3, []), SHOT_PX);
  expect(nextLook(outlined, tray).outline).toBe(false);
  const still = framedWith(outlined, frame(0.3), SHOT_PX);
  expect(still.stones).toBe(outlined.stones);
  expect(nextLook(still, tray).outline).toBe(false);
  const moved = framedWith(still, frame(0.6), SHOT_PX);
  expect(moved).toMatchObject({ stones: null, shown: outlined.stones });
  expect(nextLook(moved, tray).outline).toBe(true);
});

it('changes the sentence only when two frames in a row call for it, but the first one at once', () => {
  const first = after({});
  expect(first.advice).toBe('ready');
  const once = framedWith(first, inventedPreview({ lampClipped: 0.5 }), SHOT_PX);
  expect(once.advice).toBe('ready');
  expect(framedWith(once, inventedPreview(), SHOT_PX).advice).toBe('ready');
  expect(framedWith(once, inventedPreview({ lampClipped: 0.6 }), SHOT_PX).advice).toBe('too-bright');
});

it('looks for other lights in one frame of four, and keeps to what it saw until the next', () => {
  const unchecked = inventedPreview({ secondLight: null, lampPartly: null });
  let framing = after({ secondLight: true });
  for (let k = 1; k < CHECK_LAMP_EVERY; k++) {
    expect(nextLook(framing, TRAY).checkLamp).toBe(false);
    framing = framedWith(framing, unchecked, SHOT_PX);
    expect(framing.advice).toBe('second-light');
  }
  expect(nextLook(framing, TRAY).checkLamp).toBe(true);
  const gone = framedWith(framing, inventedPreview({ secondLight: false }), SHOT_PX);
  expect(framedWith(gone, unchecked, SHOT_PX).advice).not.toBe('second-light');
});
