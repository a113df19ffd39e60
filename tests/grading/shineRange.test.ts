import { expect, it } from 'vitest';
import { glossOf } from '../../src/grading/gloss';
import { shineRange } from '../../src/grading/shineRange';
import { shineSpan } from '../../src/grading/shineSpan';
import { highlightOf } from '../helpers/measuredStone';

it('spans the 60° reading as the gloss itself does', () => {
  const gloss = glossOf(highlightOf(0.03, 0.4).byIndex, 'obsidian');
  const span = shineSpan(shineRange(gloss, null), ({ gu60 }) => gu60)!;
  expect([span.value, span.low, span.high]).toEqual([gloss.gu60, gloss.gu60Low, gloss.gu60High]);
});

it('holds the peak of the haze inside a wide interval', () => {
  const gloss = glossOf(highlightOf(0.016, 8).byIndex, 'quartz');
  const span = shineSpan(shineRange(gloss, null), ({ haze }) => haze)!;
  const ends = shineRange(gloss, null).others.slice(-2);
  for (const { haze } of ends) expect(span.high).toBeGreaterThan(haze);
});

it('is null for a figure that is unknown', () => {
  const gloss = glossOf(highlightOf(0.03).byIndex, null);
  expect(shineSpan(shineRange(gloss, null), ({ contrast }) => contrast)).toBeNull();
  expect(shineSpan(shineRange(gloss, 0.2), ({ contrast }) => contrast)?.value).toBeGreaterThan(0);
});
