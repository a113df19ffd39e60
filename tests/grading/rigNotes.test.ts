import { expect, it } from 'vitest';
import { type ComparedRig, rigNotes } from '../../src/grading/rigNotes';

const same: ComparedRig = {
  byBall: true,
  changes: [],
  lampOffDeg: 0.4,
  lampSizeRatio: 1.01,
  shadowTurnDeg: null,
  scaleRatio: 1,
  exposureRatio: 1,
};

it('says in one sentence that all stands as it did, and by what that was told', () => {
  expect(rigNotes(same)).toEqual(['Lamp and camera stand as remembered (by its ball).']);
  expect(rigNotes({ ...same, byBall: false })[0]).toContain('(by tray, shadows and edges)');
});

it('takes another exposure for no alarm when the ball is seen', () => {
  const brighter = { ...same, changes: ['exposure-changed'], exposureRatio: 0.8 };
  expect(rigNotes(brighter)).toEqual([
    'Lamp and camera stand as remembered (by its ball).',
    'The exposure is 80 % of the remembered one: the ball makes up for it.',
  ]);
  expect(rigNotes({ ...brighter, byBall: false })).toEqual([
    'Lamp and camera are not as remembered (by tray, shadows and edges).',
    "The exposure is 80 % of the remembered one: corrected by the tray's light.",
  ]);
});

it('says where shadows fall now, unless they hardly turned', () => {
  const turned = { ...same, byBall: false, changes: ['lamp-moved'], lampOffDeg: null, shadowTurnDeg: 20 };
  expect(rigNotes(turned)).toContain('Shadows fall 20° from where they fell.');
  expect(rigNotes({ ...turned, shadowTurnDeg: 3 })).toHaveLength(1);
});

it('says how much wider or narrower the lamp looks', () => {
  const nearer = { ...same, changes: ['lamp-moved'], lampSizeRatio: 1.25 };
  expect(rigNotes(nearer)).toContain('It looks 125 % as wide as it did.');
});

it('says by how much lamp and camera moved', () => {
  const moved = { ...same, changes: ['lamp-moved', 'camera-moved'], lampOffDeg: 7.2, scaleRatio: 0.93 };
  expect(rigNotes(moved)).toEqual([
    'Lamp and camera are not as remembered (by its ball).',
    "The lamp's direction is 7.2° off.",
    'A pixel covers 93 % of what it covered.',
  ]);
});
