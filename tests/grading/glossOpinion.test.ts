import { expect, it } from 'vitest';
import { glossOf } from '../../src/grading/gloss';
import { glossOpinion } from '../../src/grading/glossOpinion';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import type { MaterialName } from '../../src/grading/materials';
import type { Step } from '../../src/grading/steps';
import { highlightOf } from '../helpers/measuredStone';

function opinionOn(alpha: number, step: Step, doubt = 0.1, material: MaterialName | null = 'agate') {
  const gloss = glossOf(highlightOf(alpha, doubt).byIndex, material);
  return glossOpinion(gloss, step, DEFAULT_LIMITS[step], material);
}

it('lets a stone go on that is as smooth as its step makes it', () => {
  expect(opinionOn(0.15, 'fine').action).toBe('advance');
  expect(opinionOn(0.15, 'fine').reason).toMatch(
    /^Reads about 7.\d gloss units at 60° \(.* to .*\); 3.\d or more is expected after fine\.$/,
  );
});

it('repeats a step that left the stone too rough', () => {
  expect(opinionOn(0.4, 'fine').action).toBe('repeat');
  expect(opinionOn(0.4, 'fine').reason).not.toContain('just be enough');
  expect(opinionOn(0.26, 'fine').reason).toContain('It could just be enough');
});

it('looks closer when the interval crosses what is expected', () => {
  expect(opinionOn(0.24, 'fine').action).toBe('look-closer');
  expect(opinionOn(0.24, 'fine').reason).toContain('not sure enough');
});

it('finishes an agate close to its ceiling', () => {
  expect(opinionOn(0.008, 'polish').action).toBe('finished');
  expect(opinionOn(0.008, 'polish').reason).toMatch(
    /^Reads about 87 gloss units .*, mirror: 92 % of its ceiling, a perfect polish of agate reads 95\.$/,
  );
});

it('says what is missing for a finish', () => {
  expect(opinionOn(0.05, 'polish').action).toBe('repeat');
  expect(opinionOn(0.05, 'polish').reason).toContain('Finished means 75 %, 71 gloss units.');
});

it('is honest about a polish it cannot tell apart', () => {
  expect(opinionOn(0.014, 'polish', 0.5).action).toBe('look-closer');
  expect(opinionOn(0.014, 'polish', 0.5).reason).toContain('It could be as little as');
  expect(opinionOn(0.02, 'polish', 0.5).action).toBe('repeat');
  expect(opinionOn(0.02, 'polish', 0.5).reason).toContain('It could be as much as');
});

it('knows that some jaspers stop at satin', () => {
  // Common practice.
  expect(opinionOn(0.08, 'polish', 0.1, 'jasper').reason).toContain(
    'Many pieces of jasper stop at satin: if one more polish brings nothing, call it finished.',
  );
  expect(opinionOn(0.08, 'polish', 0.1, 'agate').reason).not.toContain('Many pieces');
});
