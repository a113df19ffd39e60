import { expect, it } from 'vitest';
import { boxOfPlaces } from '../../src/image/boxOfPlaces';

const photo = { widthPx: 100, heightPx: 60 };

it('holds every place and its margin', () => {
  const places = [
    [10.4, 20],
    [15, 30.2],
  ] as const;
  expect(boxOfPlaces(places, 2, photo)).toEqual({ row: 8, column: 18, width: 16, height: 10 });
});

it('stays inside the photo, and keeps a pixel when all lies beyond it', () => {
  expect(boxOfPlaces([[-5, 98]], 4, photo)).toEqual({ row: 0, column: 94, width: 6, height: 1 });
  expect(boxOfPlaces([[80, 300]], 1, photo)).toEqual({ row: 59, column: 99, width: 1, height: 1 });
});
