import { afterEach, expect, it } from 'vitest';
import { german } from '../../src/texts/german/german';
import { seenName } from '../../src/texts/seenName';
import { speak, speech } from '../../src/texts/speech';

const english = speech();
afterEach(() => speak(english));

it('leaves every name of which something can be seen as it is', () => {
  for (const name of [
    '3',
    ' the green one ',
    '石',
    '.',
    '👩‍👩‍👧‍👦',
    '\u202eא',
    'a\u200b',
    '<b>',
    '__proto__',
  ])
    expect(seenName(name)).toBe(name);
});

// Unicode's DerivedCoreProperties.txt: Default_Ignorable_Code_Point, from memory.
it('has words for a name of which nothing can be seen, in both languages', () => {
  const none = [
    '',
    '  ',
    '\n',
    '\u200b\u200c\u200d\u2060\ufeff',
    '\u3164',
    '\u00a0',
    '\u00ad',
    '\u202e',
    '\ud800',
    '\u0000',
  ];
  for (const name of none) expect(seenName(name)).toBe('Without a name');
  speak({ language: 'de', texts: german });
  for (const name of none) expect(seenName(name)).toBe('Ohne Namen');
});
