import { expect, it } from 'vitest';
import { groupName, nameInside, percent, percents, weeks } from '../../src/compare/compareWords';

it('rounds shares to whole percents and keeps a minus', () => {
  expect([percent(0.884), percent(-0.013), percent(-0.001)]).toEqual(['88\u00a0%', '−1\u00a0%', '0\u00a0%']);
  expect([percents(0.82, 0.93), percents(0.881, 0.882)]).toEqual(['82 to 93\u00a0%', '88\u00a0%']);
});

it('says one week and several weeks', () => {
  expect([weeks(1), weeks(6.14), weeks(0), weeks(12.4)]).toEqual([
    '1 week',
    '6.1 weeks',
    '0 weeks',
    '12 weeks',
  ]);
});

it('keeps the owner’s capitals inside a sentence, not those of materials', () => {
  expect(nameInside('Agate', 'material')).toBe('agate');
  expect(nameInside('Far Ridge', 'source')).toBe('Far Ridge');
  expect(nameInside('', 'source')).toBe('source not said');
  expect(groupName('', 'material')).toBe('Material not said');
});
