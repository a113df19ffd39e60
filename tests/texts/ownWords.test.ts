import { expect, it } from 'vitest';
import { ownWords } from '../../src/texts/ownWords';

it('leaves words that turn nothing as they are', () => {
  for (const words of ['Brook pebbles', 'Kiesel, groß (3)', '河の石', 'галька', ''])
    expect(ownWords(words)).toBe(words);
});

it('sets words from right to left apart, in their own direction', () => {
  expect(ownWords('אבני הנחל (3)')).toBe('\u2068אבני הנחל (3)\u2069');
  expect(ownWords('Stones of حصى')).toBe('\u2068Stones of حصى\u2069');
});

it('lets no mark in a name turn the rest of the sentence, or end the setting apart early', () => {
  expect(ownWords('a\u202eb')).toBe('\u2068ab\u2069');
  expect(ownWords('a\u2069\u2067b')).toBe('\u2068ab\u2069');
});
