import { expect, it } from 'vitest';
import type { GlossTruth } from './glossTruth';
import { truthOfVariant } from './truthOfVariant';

const truth: GlossTruth = {
  photo: 'a.clean.jpg',
  mmPerPx: 0.1,
  ball: { row: 9.5, column: 19.5, radiusPx: 8, diameterMm: 16 },
  lamp: { direction: [0, 0, 1], angularDiameterDeg: 12, shape: 'round' },
  faults: ['wet'],
  variants: [
    { variant: 'clean', faults: ['wet'] },
    { variant: 'too-few-px', faults: ['wet', 'too-few-px'], scale: 0.5 },
  ],
  stones: [
    {
      id: 1,
      material: 'basalt',
      form: 'oval',
      alpha: 0.1,
      n: 1.6,
      center: [1.5, 3.5],
      outline: [
        [-0.5, 3.5],
        [3.5, 3.5],
        [3.5, 7.5],
      ],
      flaws: [{ kind: 'fracture', row: 1.5, column: 1.5, path: [[1.5, 1.5]], visible: true }],
      decoys: [],
      highlight: { row: 5.5, column: 7.5, visible: true },
    },
  ],
};

it('takes the faults of the variant, and those of the scene where none are listed', () => {
  expect(truthOfVariant(truth, 'too-few-px').faults).toEqual(['wet', 'too-few-px']);
  expect(truthOfVariant(truth, 'another').faults).toEqual(['wet']);
});

it('halves pixels by their edges, the corner of the picture at −½', () => {
  const { mmPerPx, ball, stones } = truthOfVariant(truth, 'too-few-px');
  expect([mmPerPx, ball.row, ball.column, ball.radiusPx]).toEqual([0.2, 4.5, 9.5, 4]);
  expect(stones[0]?.outline).toEqual([
    [-0.5, 1.5],
    [1.5, 1.5],
    [1.5, 3.5],
  ]);
  expect(stones[0]?.highlight).toMatchObject({ row: 2.5, column: 3.5 });
  expect(stones[0]?.flaws[0]?.path).toEqual([[0.5, 0.5]]);
});

it('leaves a photo of full size as it is', () => {
  expect(truthOfVariant(truth, 'clean')).toEqual(truth);
});
