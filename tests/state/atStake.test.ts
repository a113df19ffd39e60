import { monotonicFactory } from 'ulid';
import { expect, it } from 'vitest';
import { atStake } from '../../src/state/atStake';

const DAY_MS = 86_400_000;
const NOW_MS = Date.UTC(2026, 5, 30);

/** Ids of photos kept so many days ago. */
function keptDaysAgo(...days: number[]): string[] {
  const next = monotonicFactory();
  return days.map((one) => next(NOW_MS - one * DAY_MS));
}
const level = (ids: string[], isLasting = true) => atStake(ids, null, isLasting, NOW_MS).level;

it('counts what was kept since the last saving, and says since when', () => {
  const ids = keptDaysAgo(40, 20, 10, 3);
  expect(atStake(ids, null, true, NOW_MS)).toMatchObject({ photos: 4, sinceMs: NOW_MS - 40 * DAY_MS });
  expect(atStake(ids, ids[1]!, true, NOW_MS)).toMatchObject({ photos: 2, sinceMs: NOW_MS - 10 * DAY_MS });
  expect(atStake(ids, ids[3]!, true, NOW_MS)).toEqual({ photos: 0, sinceMs: null, level: 'nothing' });
  expect(atStake([], null, true, NOW_MS)).toEqual({ photos: 0, sinceMs: null, level: 'nothing' });
});

it('says it the more plainly, the more photos there are and the older they are', () => {
  const many = (count: number) => keptDaysAgo(...Array<number>(count).fill(1));
  expect(level(many(9))).toBe('little');
  expect(level(many(10))).toBe('much');
  expect(level(many(50))).toBe('most');
  expect(level(keptDaysAgo(31, 2, 1))).toBe('much');
  expect(level(keptDaysAgo(121, 2, 1))).toBe('most');
});

it('is in no hurry with one or two photos, however old', () => {
  expect(level(keptDaysAgo(300, 200))).toBe('little');
});

it('counts twice what the browser has not promised to keep', () => {
  expect(level(keptDaysAgo(1, 1, 1, 1, 1), false)).toBe('much');
  expect(level(keptDaysAgo(16, 2, 1), false)).toBe('much');
  expect(level(keptDaysAgo(16, 2, 1))).toBe('little');
});
