import { expect, it } from 'vitest';
import { DEFAULT_LIMITS, LIMIT_NOTES } from '../../src/grading/limits';
import { STEPS } from '../../src/grading/steps';

it('has limits for every step and a note with a source for every limit', () => {
  for (const step of STEPS) {
    for (const limit of Object.keys(DEFAULT_LIMITS[step]) as (keyof typeof LIMIT_NOTES)[]) {
      expect(LIMIT_NOTES[limit].source).toMatch(/our default|common practice/);
    }
  }
});

it('sets a stone aside only for fractures longer than those it grinds on for', () => {
  for (const step of STEPS) {
    expect(DEFAULT_LIMITS[step].setAsideFractureMm).toBeGreaterThan(DEFAULT_LIMITS[step].maxFractureMm);
  }
});

it('asks for a share of the ceiling at polish alone', () => {
  expect(STEPS.filter((step) => DEFAULT_LIMITS[step].minShareOfCeiling !== null)).toEqual(['polish']);
});
