import { expect, it } from 'vitest';
import { dullOpinion } from '../../src/grading/dullOpinion';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import type { Step } from '../../src/grading/steps';

const opinionOn = (gu60AtMost: number | null, step: Step) =>
  dullOpinion(gu60AtMost, step, DEFAULT_LIMITS[step], 'agate');

it('expects no highlight after coarse or medium', () => {
  expect(opinionOn(null, 'coarse').action).toBe('advance');
  expect(opinionOn(12, 'medium')).toEqual({
    action: 'advance',
    reason: 'No highlight stands out: at most about 12 gloss units at 60°, as expected after medium grit.',
  });
});

it('looks closer when a later step should have left one and nothing is known', () => {
  for (const step of ['fine', 'prepolish', 'polish'] as const) {
    expect(opinionOn(null, step).action).toBe('look-closer');
    expect(opinionOn(null, step).reason).toContain('No highlight found');
  }
});

it('repeats a polish that surely fell short, by as much as it says', () => {
  // 75 % of an agate's ceiling, 95, is 71: common practice for finished, see limits.ts.
  expect(opinionOn(20, 'polish').action).toBe('repeat');
  expect(opinionOn(20, 'polish').reason).toContain('71 or more is expected after the polish step');
});

it('looks closer when the bound still allows what is expected', () => {
  expect(opinionOn(80, 'polish').action).toBe('look-closer');
});
