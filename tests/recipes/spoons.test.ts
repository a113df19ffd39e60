import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  atTheBench,
  inTablespoons,
  KG_PER_LB,
  ML_PER_TABLESPOON,
  spoonWords,
} from '../../src/recipes/spoons';

const words = (tablespoons: number) => {
  const spoons = atTheBench(tablespoons);
  return spoons && spoonWords(spoons);
};

it('says amounts as they are measured', () => {
  expect(words(2)).toBe('2 tablespoons');
  expect(words(1)).toBe('1 tablespoon');
  expect(words(1.55)).toBe('1 ½ tablespoons');
  expect(words(5.9)).toBe('6 tablespoons');
  expect(words(12.4)).toBe('12 tablespoons');
  // A quarter of a tablespoon is three quarters of a teaspoon.
  expect(words(0.25)).toBe('¾ teaspoon');
  expect(words(0.5)).toBe('1 ½ teaspoons');
  // Nearly a tablespoon is one, not three teaspoons.
  expect(words(0.99)).toBe('1 tablespoon');
});

it('takes a tablespoon for 14.8 ml and a pound for 0.4536 kg', () => {
  // NIST SP 811, appendix B.8, to four digits: tablespoon 14.79 ml; pound 0.453 592 37 kg exactly.
  expect(ML_PER_TABLESPOON).toBeCloseTo(14.79, 2);
  expect(KG_PER_LB).toBe(0.45359237);
});

it('never measures more of less, and stays near', () => {
  const amount = fc.double({ min: 1e-6, max: 500, noNaN: true });
  fc.assert(
    fc.property(amount, amount, (a, b) => {
      const [less, more] = [Math.min(a, b), Math.max(a, b)].map((one) => inTablespoons(atTheBench(one)!));
      expect(less!).toBeLessThanOrEqual(more! + 1e-12);
    }),
  );
  fc.assert(
    fc.property(amount, (tablespoons) => {
      const spoons = atTheBench(tablespoons)!;
      expect(4 * spoons.count).toBe(Math.round(4 * spoons.count));
      const off = Math.abs(inTablespoons(spoons) - tablespoons);
      expect(off).toBeLessThanOrEqual(tablespoons < 1 ? 1 / 12 : tablespoons / 8);
    }),
  );
});

it('measures the same amount twice the same way', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 500, noNaN: true }), (tablespoons) => {
      const once = atTheBench(tablespoons)!;
      expect(atTheBench(inTablespoons(once))).toEqual(once);
    }),
  );
});

it('measures nothing of nothing, and refuses what is no amount', () => {
  expect(atTheBench(0)).toBeNull();
  expect(() => atTheBench(-1)).toThrow('-1 tablespoons are no amount.');
  expect(() => atTheBench(Number.NaN)).toThrow('NaN tablespoons are no amount.');
});
