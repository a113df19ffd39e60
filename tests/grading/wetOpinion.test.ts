import { expect, it } from 'vitest';
import { glossOf } from '../../src/grading/gloss';
import { wetOpinion } from '../../src/grading/wetOpinion';
import { highlightOf } from '../helpers/measuredStone';

it('calls a coarse stone that shines wet', () => {
  // Common practice: a coarse-ground stone is matte by physics; if it shines, it is wet.
  const opinion = wetOpinion(glossOf(highlightOf(0.03).byIndex, 'agate'), 'coarse', 'agate');
  expect(opinion?.sure).toBe(true);
  expect(opinion?.reason).toMatch(/coarse grit leaves 11 at most: it looks wet\. Dry it/);
});

it('is not sure when the interval reaches into dry', () => {
  const opinion = wetOpinion(glossOf(highlightOf(0.1, 0.5).byIndex, 'agate'), 'coarse', 'agate');
  expect(opinion?.sure).toBe(false);
  expect(opinion?.reason).toContain('it may be wet');
});

it('leaves dull stones, stones without a highlight and late steps alone', () => {
  expect(wetOpinion(glossOf(highlightOf(0.3).byIndex, 'agate'), 'coarse', 'agate')).toBeNull();
  expect(wetOpinion(null, 'coarse', null)).toBeNull();
  expect(wetOpinion(glossOf(highlightOf(0.005).byIndex, 'agate'), 'polish', 'agate')).toBeNull();
});
