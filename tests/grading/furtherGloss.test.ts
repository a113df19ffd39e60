import { expect, it } from 'vitest';
import { furtherGloss } from '../../src/grading/furtherGloss';
import { glossOf } from '../../src/grading/gloss';

const read = (alpha: number, spread: number) => [
  { n: 1.54, alpha, alphaLow: alpha / spread, alphaHigh: alpha * spread },
];
const at = (alpha: number, spread: number) => ({ row: 5, column: 7, byIndex: read(alpha, spread) });
const mirror = glossOf(read(0.01, 1.3), null);

it('a facet left at satin differs from the mirror beside it', () => {
  const [facet] = furtherGloss(mirror, [at(0.08, 1.3)], null);
  expect(facet).toMatchObject({ row: 5, column: 7, differs: true });
  expect(facet!.gu60).toBeLessThan(mirror.gu60 / 2);
});

it('does not differ while the intervals overlap, or less than twofold', () => {
  expect(furtherGloss(mirror, [at(0.03, 4)], null)[0]!.differs).toBe(false);
  expect(furtherGloss(glossOf(read(0.01, 1.1), null), [at(0.015, 1.1)], null)[0]!.differs).toBe(false);
});

it('law: which of two faces is looked at first does not matter', () => {
  const satin = glossOf(read(0.08, 1.3), null);
  expect(furtherGloss(satin, [at(0.01, 1.3)], null)[0]!.differs).toBe(true);
});

it('says nothing where the lamp is seen once', () => {
  expect(furtherGloss(mirror, [], null)).toEqual([]);
});
