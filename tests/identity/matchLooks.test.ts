import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lookDistance } from '../../src/identity/lookDistance';
import { matchLooks } from '../../src/identity/matchLooks';
import type { StoneLook } from '../../src/measure/stoneLook';

/** A look of one color all over: L*, a*, b*. */
function lookOf(lightness: number, a: number, b: number, lengthMm = 26): StoneLook {
  const widthMm = 0.8 * lengthMm;
  const even = (value: number) => [-4, -2, 0, 2, 4].map((off) => value + off);
  return {
    colors: [...even(lightness), ...even(a), ...even(b)],
    pattern: new Array(12).fill(0.5),
    silhouette: new Array(72).fill(1),
    size: [lengthMm, widthMm, 0.785 * lengthMm * widthMm],
  };
}

const RED = lookOf(40, 35, 25);
const GREEN = lookOf(35, -20, 12);
const PALE = lookOf(80, 0, 4);
const once = (look: StoneLook) => ({ looks: [look], checksAgo: 1 });

it('knows stones again however they are shuffled', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray([0, 1, 2], { minLength: 3 }), (order) => {
      const stones = [RED, GREEN, PALE];
      const matches = matchLooks(
        order.map((i) => stones[i]!),
        stones.map(once),
      );
      expect(matches.map(({ known }) => known)).toEqual(order);
      expect(Math.min(...matches.map(({ confidence }) => confidence))).toBeGreaterThan(0.95);
    }),
  );
});

it('gives no stone away twice, and says when it cannot tell twins apart', () => {
  const matches = matchLooks([RED, RED], [once(RED), once(lookOf(40.3, 35, 25))]);
  expect(new Set(matches.map(({ known }) => known)).size).toBe(2);
  expect(Math.max(...matches.map(({ confidence }) => confidence))).toBeLessThan(0.5);
});

it('tells twins apart by size, which never grows', () => {
  const small = lookOf(40, 35, 25, 20);
  const matches = matchLooks([lookOf(40, 35, 25, 25.8), lookOf(40, 35, 25, 19.8)], [once(small), once(RED)]);
  expect(matches.map(({ known }) => known)).toEqual([1, 0]);
  const [seen, shrunk] = [lookOf(40, 35, 25, 26), lookOf(40, 35, 25, 25.5)];
  expect(lookDistance(shrunk, seen)).toBeLessThan(lookDistance(seen, shrunk));
});

it('takes a stone that looks like none of the known ones for none of them', () => {
  const [red, pale] = matchLooks([RED, PALE], [once(RED), once(GREEN)]);
  expect(red?.known).toBe(0);
  expect(pale?.known).toBeNull();
  // A new stone is never taken for granted.
  expect(pale?.confidence).toBeLessThanOrEqual(0.5);
});

it('knows a stone by any of its faces', () => {
  const face = lookOf(60, 10, 30);
  expect(matchLooks([face], [{ looks: [face, RED], checksAgo: 1 }, once(GREEN)])[0]?.known).toBe(0);
});

it('has nothing to match in an empty tray, and nothing to match with on the first check', () => {
  expect(matchLooks([], [once(RED)])).toEqual([]);
  expect(matchLooks([RED], []).map(({ known }) => known)).toEqual([null]);
});

it('finds no distance between a look and itself', () => {
  expect(lookDistance(RED, RED, 0)).toBe(0);
  expect(lookDistance(RED, GREEN)).toBeGreaterThan(5);
});
