import { expect, it } from 'vitest';
import { compareGroups } from '../../src/compare/compareGroups';
import { dotPaths } from '../../src/ui/compare/dotPaths';
import { plotAxis } from '../../src/ui/compare/plotAxis';
import { stackDots, threadDots } from '../../src/ui/compare/stackDots';
import { inventedDigests } from '../compare/inventedDigest';
import { inventedJournal } from '../compare/inventedJournal';

it('piles stones of one place to both sides of the line, and leaves others on it', () => {
  const { offsets, radius } = stackDots([20, 20, 20, 100], 60);
  expect(offsets).toEqual([0, 2 * radius + 0.5, -(2 * radius + 0.5), 0]);
});

it('keeps every pile in its room, with dots the smaller the more there are', () => {
  for (const count of [3, 12, 300]) {
    const { offsets, radius, isPressed } = stackDots(Array(count).fill(50), 60);
    expect(Math.max(...offsets.map(Math.abs)) + radius).toBeLessThanOrEqual(31);
    expect(isPressed).toBe(count === 300);
    expect(new Set(offsets).size).toBe(count);
  }
  expect(stackDots(Array(12).fill(50), 60).radius).toBeLessThan(stackDots(Array(3).fill(50), 60).radius);
});

it('threads a few stones on one line and many on several, within their room', () => {
  const evenly = (count: number) => Array.from({ length: count }, (_, k) => (300 * k) / count);
  expect(new Set(threadDots(evenly(10), 48).offsets)).toEqual(new Set([0]));
  for (const count of [100, 1000, 6000]) {
    const { offsets, radius } = threadDots(evenly(count), 48);
    expect(Math.max(...offsets.map(Math.abs)) + radius).toBeLessThanOrEqual(24.5);
  }
  expect(threadDots([12], 48).offsets).toEqual([0]);
});

it('draws every stone exactly once, whatever is compared', () => {
  const { stones, batchNames } = inventedJournal(600);
  for (const what of ['gloss', 'coarse', 'size', 'finished'] as const) {
    const { groups } = compareGroups(stones, 'source', what, batchNames);
    const axis = plotAxis(groups, what, 360);
    for (const group of groups) {
      const paths = dotPaths(group, what, axis, 33, 48);
      const count = (path: string, start: RegExp) => path.match(start)?.length ?? 0;
      // A pebble closes its outline, a cross is begun once.
      expect(count(paths.known, /z/g)).toBe(group.known);
      expect(count(paths.waiting, /z/g)).toBe(what === 'finished' ? 0 : group.waiting);
      expect(count(paths.givenUp, /M/g)).toBe(group.givenUp);
    }
  }
});

it('lets finished stones and those set aside meet at the share that finished', () => {
  const stones = inventedDigests(Array(10).fill(0), (_, place) => ({
    action: place < 7 ? 'finished' : 'set-aside',
  }));
  const { groups } = compareGroups(stones, 'material', 'finished', new Map());
  const axis = plotAxis(groups, 'finished', 400);
  const paths = dotPaths(groups[0]!, 'finished', axis, 33, 48);
  const placesOf = (path: string) => [...path.matchAll(/M([\d.]+)/g)].map(([, x]) => Number(x));
  expect(Math.max(...placesOf(paths.known))).toBeLessThan(axis.x(0.7));
  expect(Math.min(...placesOf(paths.givenUp))).toBeGreaterThan(axis.x(0.7));
});
