import { expect, it } from 'vitest';
import { exampleReading, exampleRow } from './exampleRow';
import { cleanVerdicts, perturbedVerdicts } from './glossTargets';

/** Twenty stones read without error, but for two whose narrow intervals miss the truth. */
const wellRead = Array.from({ length: 20 }, (_, i) => {
  const alpha = 0.01 * 1.15 ** i;
  const reading = exampleReading(alpha);
  const interval = i < 2 ? { alphaLow: 1.01 * alpha, alphaHigh: 1.02 * alpha } : {};
  return exampleRow({ stone: i, alpha, reading: { ...reading, ...interval } });
});

const unmet = (verdicts: readonly { readonly what: string; readonly met: boolean }[]) =>
  verdicts.filter(({ met }) => !met).map(({ what }) => what);

it('meets every target with right numbers and honest intervals', () => {
  expect(unmet(cleanVerdicts(wellRead))).toEqual([]);
  expect(unmet(perturbedVerdicts(wellRead))).toEqual([]);
});

it('does not meet the coverage with intervals that always hold: they are too wide', () => {
  const rows = wellRead.map((row) => exampleRow({ ...row, reading: exampleReading(row.alpha) }));
  expect(unmet(cleanVerdicts(rows))).toEqual(['90 % intervals that hold the truth']);
  expect(unmet(perturbedVerdicts(rows))).toEqual([]);
});

it('does not meet a target on which no stone tells', () => {
  expect(cleanVerdicts([]).some(({ met }) => met)).toBe(false);
  expect(perturbedVerdicts([]).some(({ met }) => met)).toBe(false);
});

it('one estimate badly off without a warning is one too many on perturbed copies', () => {
  const rows = [...wellRead, exampleRow({ stone: 99, alpha: 0.4, reading: exampleReading(0.1) })];
  expect(unmet(perturbedVerdicts(rows))).toEqual(['off by more than a factor of 2 without a warning, all α']);
});
