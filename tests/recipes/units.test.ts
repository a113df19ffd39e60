import { expect, it } from 'vitest';
import { checkedUnits, FIRST_UNITS } from '../../src/recipes/units';

it('takes over the units that were kept, and the first ones for anything else', () => {
  expect(checkedUnits({ length: 'inch', amount: 'grams', weight: 'lb' })).toEqual({
    ...{ length: 'inch', amount: 'grams', weight: 'lb' },
  });
  for (const kept of [null, 'inch', { length: 3, weight: 'stone' }]) {
    expect(checkedUnits(kept)).toEqual(FIRST_UNITS);
  }
});
