import { expect, it } from 'vitest';
import { sortFlaws } from '../../src/ui/stone/sortFlaws';

const pit = (diameterMm: number, confidence: number) =>
  ({ kind: 'pit', row: 0, column: 0, diameterMm, confidence }) as const;

it('puts the largest first and parts the sure from the doubtful', () => {
  const { sure, doubtful } = sortFlaws([pit(1, 0.9), pit(3, 0.4), pit(2, 0.5), pit(4, 0.3)], 0.5);
  expect(sure.map(({ diameterMm }) => diameterMm)).toEqual([2, 1]);
  expect(doubtful.map(({ diameterMm }) => diameterMm)).toEqual([4, 3]);
});

it('leaves out what grading leaves out', () => {
  expect(sortFlaws([pit(1, 0.12)], 0.5)).toEqual({ sure: [], doubtful: [] });
});

it('orders lengths and diameters together', () => {
  const crack = { kind: 'fracture', row: 0, column: 0, lengthMm: 2, confidence: 1 } as const;
  expect(sortFlaws([pit(1, 1), crack, pit(3, 1)], 0.5).sure.map(({ kind }) => kind)).toEqual([
    'pit',
    'fracture',
    'pit',
  ]);
});
