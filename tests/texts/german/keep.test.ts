import { expect, it } from 'vitest';
import { keep as english } from '../../../src/texts/english/keep';
import { keep as german } from '../../../src/texts/german/keep';

it('says in German whatever it says in English, with the numbers and names given', () => {
  const said = ({ batchOf, which }: typeof german | typeof english) => [
    batchOf('7'),
    which.compare(7, 9, true),
    which.compare(7, 9, false),
    which.place(7),
    which.placeInPhoto(7),
    which.known('7'),
  ];
  const inEnglish = said(english);
  for (const [i, sentence] of said(german).entries()) {
    expect(sentence).not.toBe(inEnglish[i]);
    expect(sentence).toContain('7');
  }
});

it('counts the stones that are known', () => {
  expect(german.which.compare(1, 9, false)).toMatch(/^1 von 9 ist bekannt\. Vergleich die anderen /);
  expect(german.which.compare(8, 9, false)).toMatch(/^8 von 9 sind bekannt\./);
  expect(german.which.compare(9, 9, true)).toContain('Vergleich sie ');
});

it('makes a sentence around the name of the batch', () => {
  const { before, after } = german.kept;
  expect(`${before}Bachkiesel${after}`).toBe(
    'Im Journal aufgehoben unter Bachkiesel. Das bleibt, wie es ist, was immer du hier änderst.',
  );
});

it('has buttons short enough for a phone', () => {
  const { keep, keeping, again, which } = german;
  for (const word of [keep, keeping, again, which.later, which.done, which.others])
    expect(word.length, word).toBeLessThanOrEqual(24);
});
