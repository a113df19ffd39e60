import { expect, it } from 'vitest';
import type { CompareWhat } from '../../src/compare/compareBy';
import { stoneFigure } from '../../src/compare/stoneFigure';
import type { StoneDigest } from '../../src/history/batchDigest';
import { favoriteLines, stoneWords } from '../../src/ui/compare/stoneWords';
import { stoneTitle } from '../../src/ui/parts/stoneTitle';
import { inventedDigest } from '../compare/inventedDigest';

const words = (what: CompareWhat, said: Partial<StoneDigest> = {}) =>
  stoneWords(stoneFigure(inventedDigest(said), what)!, what).replaceAll('\u00a0', ' ');

it('says what a stone’s gloss is, and how sure', () => {
  expect(words('gloss')).toBe('90 % of the ceiling (85 to 95 %), 86 gloss units');
});

it('says whether the weeks in coarse are over', () => {
  expect(words('coarse')).toBe('6 weeks in coarse');
  expect(words('coarse', { steps: ['coarse'], action: 'repeat' })).toBe('6 weeks so far, still in coarse');
  expect(words('coarse', { steps: ['coarse'], action: 'set-aside' })).toBe(
    'set aside after 6 weeks in coarse',
  );
});

it('says how long a stone was and is', () => {
  expect(words('size')).toBe('30 mm, now 27 mm: 10 % of the length and 20 % of the area lost');
});

it('says what became of it', () => {
  expect([
    words('finished'),
    words('finished', { action: 'set-aside' }),
    words('finished', { action: 'advance' }),
  ]).toEqual(['finished', 'set aside', 'under way']);
});

it('calls a stone by its number or by the owner’s words', () => {
  expect(stoneTitle('3')).toBe('Stone 3');
  expect(stoneTitle('the green one')).toBe('the green one');
});

it('leaves out of a favorite what was never read', () => {
  expect(favoriteLines(inventedDigest()).map((line) => line.replaceAll('\u00a0', ' '))).toEqual([
    '90 % of its ceiling, mirror',
    '6 weeks in coarse',
    '27 mm long',
    'finished',
  ]);
  expect(favoriteLines(inventedDigest({ gloss: null, coarseDays: null })).slice(0, 2)).toEqual([
    'no shine read yet',
    '27 mm long',
  ]);
});
