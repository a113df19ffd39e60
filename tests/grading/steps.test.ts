import { expect, it } from 'vitest';
import { STEP_FACTS, STEPS } from '../../src/grading/steps';
import { verdicts } from '../../src/texts/english/verdicts';

it('keeps the vibratory steps to two days each, eight in all', () => {
  // Common practice.
  expect(STEPS.map((step) => STEP_FACTS[step].vibratoryDays ?? 0)).toEqual([0, 2, 2, 2, 2]);
});

it('checks coarse every seven to ten days', () => {
  // Common practice.
  expect(STEP_FACTS.coarse.rotaryDays).toEqual([7, 10]);
});

it('names the grits of the trade in order', () => {
  // Common practice: 60/90, 220, 600, 1500 silicon carbide, then aluminum-oxide polish.
  const grits = STEPS.map((step) => verdicts.grits[step]);
  expect(grits.slice(0, 4)).toEqual(['60/90', '220', '600', '1500'].map((grit) => `${grit} silicon carbide`));
  expect(grits[4]).toBe('aluminum oxide polish');
});

it('expects a smoother surface after every later step', () => {
  const alphas = STEPS.map((step) => STEP_FACTS[step].roughestAlpha);
  for (let step = 1; step < alphas.length; step++) expect(alphas[step]).toBeLessThan(alphas[step - 1]!);
});

it('never calls a surface wet that the step may still call too rough', () => {
  for (const { wetBelowAlpha, roughestAlpha } of Object.values(STEP_FACTS)) {
    expect(wetBelowAlpha ?? 0).toBeLessThan(roughestAlpha);
  }
});
