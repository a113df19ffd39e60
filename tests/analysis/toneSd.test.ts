import { expect, it } from 'vitest';
import type { HighlightReport } from '../../src/analysis/report';
import { toneSd } from '../../src/analysis/toneSd';

const read = (levels?: { height: number; body: number }): HighlightReport => ({
  row: 0,
  column: 0,
  byIndex: [],
  profile: { distance: [], measured: [], model: [] },
  ...(levels ? { levels } : {}),
});

it('is nothing for a highlight as high as the ball, over black', () => {
  expect(toneSd(read({ height: 0.8, body: 0 }), 0.8)).toBeCloseTo(0, 6);
});

it('is some hundredths to a fifth for a satin highlight on a pale stone', () => {
  const sd = toneSd(read({ height: 0.1, body: 0.3 }), 0.9);
  expect(sd).toBeGreaterThan(0.03);
  expect(sd).toBeLessThan(0.2);
});

it('law: is never below zero', () => {
  for (const height of [0.02, 0.1, 0.4, 0.9])
    for (const body of [0, 0.1, 0.4]) expect(toneSd(read({ height, body }), 0.9)).toBeGreaterThanOrEqual(0);
});

it('is nothing where the levels are not known', () => {
  expect(toneSd(read(), 0.9)).toBe(0);
  expect(toneSd(read({ height: 0, body: 0.2 }), 0.9)).toBe(0);
});
