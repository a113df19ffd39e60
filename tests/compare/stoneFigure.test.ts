import { expect, it } from 'vitest';
import { areaLoss, lengthLoss, stoneFigure } from '../../src/compare/stoneFigure';
import { inventedDigest, inventedGloss } from './inventedDigest';

it('sets gloss and its interval against the ceiling', () => {
  const figure = stoneFigure(inventedDigest({ gloss: inventedGloss(0.8) }), 'gloss');
  expect(figure).toMatchObject({ value: 0.8, state: 'known' });
  expect(figure?.low).toBeCloseTo(71 / 95, 12);
  expect(figure?.high).toBeCloseTo(81 / 95, 12);
});

it('has no gloss before polish, and no loss before a second check', () => {
  expect(stoneFigure(inventedDigest({ gloss: null }), 'gloss')).toBeNull();
  expect(stoneFigure(inventedDigest({ checkCount: 1 }), 'size')).toBeNull();
});

it('gives the share of length and of area that is gone', () => {
  const stone = inventedDigest({ lengthMm: [30, 27], areaMm2: [600, 480] });
  expect(lengthLoss(stone)).toBeCloseTo(0.1, 12);
  expect(areaLoss(stone)).toBeCloseTo(0.2, 12);
  expect(stoneFigure(stone, 'size')?.value).toBe(lengthLoss(stone));
});

it('keeps a loss below zero as it was measured', () => {
  expect(lengthLoss(inventedDigest({ lengthMm: [20, 20.4] }))).toBeCloseTo(-0.02, 12);
});

it('tells finished, set aside and under way apart', () => {
  const state = (action: 'finished' | 'set-aside' | 'repeat') =>
    stoneFigure(inventedDigest({ action }), 'finished')?.state;
  expect([state('finished'), state('set-aside'), state('repeat')]).toEqual(['known', 'given up', 'waiting']);
});

it('gives weeks in coarse, and says of those still there that they wait', () => {
  expect(stoneFigure(inventedDigest({ coarseDays: 35 }), 'coarse')).toMatchObject({
    value: 5,
    state: 'known',
  });
  const still = inventedDigest({ coarseDays: 35, steps: ['coarse'], action: 'repeat' });
  expect(stoneFigure(still, 'coarse')).toMatchObject({ value: 5, state: 'waiting' });
});
