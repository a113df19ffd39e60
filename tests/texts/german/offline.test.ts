import { expect, it } from 'vitest';
import { offline as english } from '../../../src/texts/english/offline';
import { offline } from '../../../src/texts/german/offline';

it('says everything of a new version in German, in whole sentences and short buttons', () => {
  for (const name of Object.keys(english) as (keyof typeof english)[])
    expect(offline[name], name).not.toBe(english[name]);
  for (const sentence of [offline.newVersion, offline.waits, offline.closes])
    expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
  for (const word of [offline.open, offline.later]) expect(word.length).toBeLessThanOrEqual(24);
});
