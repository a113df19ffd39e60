import { expect, it } from 'vitest';
import { additionsOf, ofWholeAdditions } from '../../src/journal/additions';

const names = (letter: string, count: number) => Array.from({ length: count }, (_, i) => `${letter}${i}`);

it('notes every record and photo in exactly one piece, of bounded size', () => {
  for (const [records, photos] of [
    [1, 0],
    [128, 1],
    [129, 3],
    [500, 500],
  ] as const) {
    const pieces = additionsOf('01T', names('r', records), names('p', photos));
    expect(pieces.flatMap((piece) => piece.records)).toEqual(names('r', records));
    expect(pieces.flatMap((piece) => piece.photos)).toEqual(names('p', photos));
    for (const piece of pieces) {
      expect(piece.records.length).toBeLessThanOrEqual(128);
      expect(piece.photos.length).toBeLessThanOrEqual(32);
    }
    expect(new Set(pieces.map(({ id }) => id)).size).toBe(pieces.length);
  }
  expect(additionsOf('01T', [], [])).toEqual([]);
});

it('tells additions that are there as a whole from those of which a piece is missing', () => {
  const [one, two] = [additionsOf('01A', names('r', 300), []), additionsOf('01B', names('s', 300), [])];
  const present = new Set([...one, ...two.slice(1)].map(({ id }) => id));
  expect(ofWholeAdditions([...present], present)).toEqual(one.map(({ id }) => id));
  expect(ofWholeAdditions(['no piece at all'], present)).toEqual([]);
});
