import { expect, it } from 'vitest';
import { gradeStone } from '../../src/grading/gradeStone';
import { STEPS } from '../../src/grading/steps';
import { withheldOpinion } from '../../src/grading/withheldOpinion';
import { fracture, measuredStone } from '../helpers/measuredStone';

const gradeAt = (step: (typeof STEPS)[number], part = {}) =>
  gradeStone(measuredStone({ glossWithheld: true, ...part }), { step, material: null, limits: null }).verdict;

it('looks closer at a sound stone whose gloss was not read, at every step, and says why', () => {
  for (const step of STEPS) {
    const { action, reasons } = gradeAt(step);
    expect(action).toBe('look-closer');
    expect(reasons).toContain(withheldOpinion().reason);
  }
  expect(withheldOpinion().reason).toMatch(/^[A-Z].*lay the ball in the tray.*\.$/);
});

it('still sets a badly fractured stone aside', () => {
  expect(gradeAt('coarse', { flaws: [fracture(20)] }).action).toBe('set-aside');
});
