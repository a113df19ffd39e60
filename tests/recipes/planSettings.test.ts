import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkedPlanSettings, FIRST_PLAN_SETTINGS, type PlanSettings } from '../../src/recipes/planSettings';
import { amountWords, weightWords } from '../../src/recipes/units';

const KEPT: PlanSettings = {
  recipes: { M1: { fine: { tablespoons: { fine: 1.5, borax: 0 }, days: { from: 2, to: 3 }, note: 'slow' } } },
  stock: { polish: { grams: 250, day: '2026-03-02', atMs: 1_772_000_000_000 } },
  washOut: { batch: 'B1', from: 'coarse', to: 'medium', ticked: ['slurry', 'soap'], soapSinceMs: 5 },
};

it('gives back what was kept', () => {
  expect(checkedPlanSettings(JSON.parse(JSON.stringify(KEPT)))).toEqual(KEPT);
});

it('drops what is not sound and keeps the rest', () => {
  const spoiled = {
    recipes: {
      M1: { fine: { tablespoons: { fine: -1, borax: '1', polish: 2 }, days: { from: 3, to: 2 } }, dull: {} },
      M2: 'nothing',
    },
    stock: { polish: { grams: 250, day: 'Monday', atMs: 1 }, fine: { grams: 1, day: '2026-03-02', atMs: 1 } },
    washOut: { batch: 'B1', from: 'coarse', to: 'medium', ticked: ['dance', 'rinse'], soapSinceMs: 'now' },
  };
  expect(checkedPlanSettings(spoiled)).toEqual({
    recipes: { M1: { fine: { tablespoons: { polish: 2 } } } },
    stock: { fine: { grams: 1, day: '2026-03-02', atMs: 1 } },
    washOut: { batch: 'B1', from: 'coarse', to: 'medium', ticked: ['rinse'], soapSinceMs: null },
  });
});

it('takes anything at all, and what it took once it takes again', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), fc.jsonValue(), (recipes, stock, washOut) => {
      expect(checkedPlanSettings(recipes)).toBeDefined();
      const once = checkedPlanSettings({ recipes, stock, washOut });
      expect(checkedPlanSettings(JSON.parse(JSON.stringify(once)))).toEqual(once);
    }),
  );
  expect(checkedPlanSettings(null)).toBe(FIRST_PLAN_SETTINGS);
});

it('reads amounts and weights in the owner’s units', () => {
  expect(amountWords('medium', 2, { amount: 'spoons' })).toEqual({
    first: '2 tablespoons',
    second: 'about 40 g',
  });
  expect(amountWords('medium', 2, { amount: 'grams' })).toEqual({
    first: '40 g',
    second: 'about 2 tablespoons',
  });
  expect(amountWords('medium', 0, { amount: 'spoons' }).first).toBe('nothing');
  expect([weightWords(2.7, { weight: 'kg' }), weightWords(2.72155422, { weight: 'lb' })]).toEqual([
    '2.7 kg',
    '6 lb',
  ]);
});
