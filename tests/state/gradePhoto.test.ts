import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { gradePhoto } from '../../src/state/gradePhoto';
import { inventedReport } from '../helpers/inventedReport';

const choices = { step: 'coarse', material: null, limits: DEFAULT_LIMITS } as const;

it('gives every stone a grade, in the order of the stones', () => {
  const { grades } = gradePhoto(inventedReport(12), choices);
  expect(grades.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
});

it('gives back the same grades until step, material or limits change', () => {
  const report = inventedReport(6);
  const first = gradePhoto(report, choices);
  expect(gradePhoto(report, { ...choices })).toBe(first);
  expect(gradePhoto(report, { ...choices, step: 'polish' })).not.toBe(first);
  expect(gradePhoto(report, { ...choices, material: 'corundum' })).not.toBe(first);
});

it('asks more of the same stones at a later step', () => {
  const report = inventedReport(12);
  const dull = (step: 'coarse' | 'polish') =>
    gradePhoto(report, { ...choices, step }).grades.filter(({ verdict }) => verdict.action === 'repeat');
  expect(dull('polish').length).toBeGreaterThan(0);
  expect(
    gradePhoto(report, { ...choices, step: 'polish' }).grades.some(
      ({ verdict }) => verdict.action === 'advance',
    ),
  ).toBe(false);
});
