import { expect, it } from 'vitest';
import { daySentence, lampSentence, offAxisDeg } from '../../src/ui/setup/rigWords';
import { lampAt } from '../helpers/drawnLamp';

const light = (off: number, around: number) => lampAt(off, around, 11, 1);

it('says from which side of the picture the light comes, and how far off the camera', () => {
  expect(lampSentence(light(36, 128))).toBe(
    'The light comes from the upper left of the picture, 36° off the camera.',
  );
  const sides = [0, 45, 90, 135, 180, -135, -90, -45].map(
    (around) => /from (.*?),? of the picture/.exec(lampSentence(light(30, around)))?.[1],
  );
  expect(sides).toEqual([
    'the right',
    'the upper right',
    'the top',
    'the upper left',
    'the left',
    'the lower left',
    'the bottom',
    'the lower right',
  ]);
  expect(offAxisDeg(light(30, 200))).toBeCloseTo(30, 6);
});

it('names no side for a lamp beside the camera', () => {
  expect(lampSentence(light(1, 40))).toBe('The lamp stands right beside the camera.');
});

it('says the day, or none when it is not known', () => {
  expect(daySentence('2026-10-03')).toBe('Remembered on October 3, 2026.');
  expect(daySentence(null)).toBe('Remembered.');
  expect(daySentence('once')).toBe('Remembered.');
});
