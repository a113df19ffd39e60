import { expect, it } from 'vitest';
import { exampleReading, exampleRow } from './exampleRow';
import { badlyOffUnwarned, glossRanks, glossScores, readable, scored } from './glossScores';

const readAs = (alpha: number, estimate: number, gu60 = 15) =>
  exampleRow({ alpha, reading: exampleReading(estimate, gu60) });

it('takes medians of the logarithms, to either side alike', () => {
  const scores = glossScores([readAs(0.1, 0.1), readAs(0.1, 0.2), readAs(0.1, 0.05)]);
  expect(scores.medianError).toBeCloseTo(Math.log(2), 12);
  expect(scores.medianLean).toBeCloseTo(0, 12);
});

it('counts stones without a number, but not in errors and coverage', () => {
  const scores = glossScores([readAs(0.1, 0.1), readAs(0.1, 0.3), exampleRow(), exampleRow()]);
  expect(scores.withNumber).toBe(2);
  expect(scores.noAnswerShare).toBe(0.5);
  expect(scores.coverage).toBe(0.5);
});

it('measures gloss units as a distance from the truth', () => {
  const scores = glossScores([readAs(0.1, 0.1, 18), readAs(0.1, 0.1, 14), readAs(0.1, 0.1, 10)]);
  expect(scores.gu60.median).toBe(3);
  expect(scores.gu60.at90).toBeCloseTo(4.6, 12);
  expect(scores.unknownCoverage).toBeCloseTo(1 / 3, 12);
});

it('has no numbers to show without stones', () => {
  const scores = glossScores([]);
  expect([scores.medianError, scores.coverage, scores.noAnswerShare]).toEqual([NaN, NaN, NaN]);
});

it('scores only stones within the roughness of the targets, both ends included', () => {
  const rows = [0.009, 0.01, 0.25, 0.26].map((alpha) => exampleRow({ alpha }));
  expect(scored(rows).map(({ alpha }) => alpha)).toEqual([0.01, 0.25]);
});

it('leaves out stones that were not found and those whose highlight a neighbor hides', () => {
  const rows = [
    exampleRow({ isFound: false }),
    exampleRow({ isHighlightSeen: false }),
    exampleRow({ stone: 3 }),
  ];
  expect(readable(rows).map(({ stone }) => stone)).toEqual([3]);
});

it('puts stones without a number behind the roughest, tied', () => {
  const rows = [readAs(0.01, 0.02), readAs(0.1, 0.2), exampleRow({ alpha: 0.3 }), exampleRow({ alpha: 0.4 })];
  expect(glossRanks(rows).leftOut).toBeCloseTo(1, 12);
  // Ranks 1, 2, 3½, 3½ against 1, 2, 3, 4: 4.5 / √(4.5 · 5).
  expect(glossRanks(rows).putLast).toBeCloseTo(4.5 / Math.sqrt(4.5 * 5), 12);
});

it('orders stones without a number by what they are at least', () => {
  const bounded = (alpha: number, alphaAtLeast: number) => exampleRow({ alpha, alphaAtLeast });
  const rows = [bounded(0.3, 0.2), readAs(0.25, 0.3), bounded(0.4, 0.25), bounded(0.5, 0.3)];
  expect(glossRanks(rows).putLast).toBeCloseTo(1, 12);
});

it('a glossy stone without a number costs rank correlation', () => {
  const rows = [exampleRow({ alpha: 0.01 }), readAs(0.1, 0.1), readAs(0.2, 0.2)];
  expect(glossRanks(rows).putLast).toBeLessThan(0);
});

it('finds estimates that are off by more than a factor of two and say nothing of it', () => {
  const rows = [readAs(0.1, 0.19), readAs(0.1, 0.21), readAs(0.1, 0.04)];
  const warned = { ...readAs(0.1, 0.3), warnings: ['ball-clipped'] };
  expect(badlyOffUnwarned([...rows, warned]).map(({ reading }) => reading?.alpha)).toEqual([0.21, 0.04]);
});
