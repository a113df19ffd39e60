import { expect, it } from 'vitest';
import { LAMP_DISTANCE_MM, lampSeenFrom } from '../../src/measure/lampSeenFrom';
import { normalize, type Vector } from '../../src/optics/vector';

const above: Vector = [0, 0, 1];
const views = { ball: above, place: above };
const lamp = { direction: normalize([0.6, 0, 0.8]), sourceSlope: 0.05 };

it('is the lamp of the ball at the ball', () => {
  const seen = lampSeenFrom(lamp, [0, 0], views);
  expect(seen.sourceSlope).toBeCloseTo(0.05, 12);
  expect(seen.direction).toEqual(lamp.direction);
});

it('stands straight above a place right below it, at the sine of the angle the distance', () => {
  // The foot of a lamp 650 mm away at 36.87° is 390 mm off; from there it is 0.8 times as far.
  const seen = lampSeenFrom(lamp, [0.6 * LAMP_DISTANCE_MM, 0], views);
  expect(seen.direction[0]).toBeCloseTo(0, 12);
  // cos of the half angle at the ball, √((1 + 0.8) / 2), and 1 below the lamp.
  expect(seen.sourceSlope).toBeCloseTo((0.05 / 0.8) * Math.sqrt(Math.sqrt(0.9)), 12);
});

it('looks larger from nearer and smaller from farther', () => {
  const from = (mm: number) => lampSeenFrom(lamp, [mm, 0], views).sourceSlope;
  expect([-100, -50, 0, 50, 100].map(from)).toEqual([-100, -50, 0, 50, 100].map(from).sort((a, b) => a - b));
});
