import { expect, it } from 'vitest';
import { ballMark } from '../../src/picture/ballMark';

const ball = { row: 200, column: 200, radiusPx: 40 };
const photo = { widthPx: 400, heightPx: 400 };
const below = { row: 250, column: 150, width: 100, height: 100 };
const above = { row: 50, column: 150, width: 100, height: 100 };
const left = { row: 150, column: 50, width: 100, height: 100 };
const right = { row: 150, column: 250, width: 100, height: 100 };

const wordPlace = (stones: readonly (typeof below)[]) => {
  const place = ballMark(ball, 2, 1, { ...photo, stones }).match(
    /data-word=""[^>]*><g transform="translate\((\S+) (\S+)\)/,
  );
  return place === null ? null : { x: Number(place[1]), y: Number(place[2]) };
};

it('rings the ball a little outside its edge', () => {
  expect(ballMark(ball, 2, 1, { ...photo, stones: [] })).toContain('<circle cx="200" cy="200" r="45"/>');
});

it('writes its name below, and moves on to where no stone lies', () => {
  expect(wordPlace([])?.y).toBeGreaterThan(245);
  expect(wordPlace([below])?.y).toBeLessThan(155);
  expect(wordPlace([below, above])?.x).toBeLessThan(155);
  expect(wordPlace([below, above, left])?.x).toBeGreaterThan(245);
});

it('leaves the name away rather than write over a stone', () => {
  expect(wordPlace([below, above, left, right])).toBeNull();
});

it('never writes beyond the edge of the photo', () => {
  const atEdge = ballMark({ ...ball, row: 355 }, 2, 1, { ...photo, stones: [] });
  expect(Number(atEdge.match(/data-word=""[^>]*><g transform="translate\(\S+ (\S+)\)/)?.[1])).toBeLessThan(
    310,
  );
});
