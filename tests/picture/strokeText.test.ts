import { expect, it } from 'vitest';
import { strokeText, strokeTextWidth } from '../../src/picture/strokeText';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';

it('places one glyph after the other', () => {
  // "11": width 4.8, spacing 2.4 glyph units; at 20 px a unit is 2 px.
  expect(strokeTextWidth('11', 20)).toBeCloseTo((4.8 + 2.4 + 4.8) * 2, 9);
  expect(strokeText('11', { x: 5, y: 7, heightPx: 20 })).toContain('translate(5 7) scale(2)');
  expect(strokeText('11', { x: 5, y: 7, heightPx: 20 })).toContain('translate(7.2 0)');
});

it('doubles the width with the height', () => {
  expect(strokeTextWidth('BALL', 24)).toBeCloseTo(2 * strokeTextWidth('BALL', 12), 9);
});

it('can write every action in lower or upper case, in every language', () => {
  for (const word of [english, german].flatMap(({ verdicts }) => Object.values(verdicts.actions))) {
    expect(strokeText(word, { x: 0, y: 0, heightPx: 10 })).toBe(
      strokeText(word.toUpperCase(), { x: 0, y: 0, heightPx: 10 }),
    );
  }
});

it('can write what is drawn beside the ball and below the picture, in every language', () => {
  for (const { tray } of [english, german])
    for (const words of [tray.ball, ...Object.values(tray.warningWords)])
      expect(strokeTextWidth(words, 10)).toBeGreaterThan(words.length);
});

it('writes the dots of umlauts above the capitals, ß as SS, and the unit of inches', () => {
  const drawn = (text: string) => strokeText(text, { x: 0, y: 0, heightPx: 10 });
  for (const [dotted, plain] of ['ÄA', 'ÖO', 'ÜU']) {
    expect(strokeTextWidth(dotted!, 10)).toBe(strokeTextWidth(plain!, 10));
    expect(drawn(dotted!).match(/-2\.[68]V/g)).toHaveLength(2);
  }
  expect(drawn('groß')).toBe(drawn('GROSS'));
  expect(strokeTextWidth('0.8 – 1 in², 3"', 10)).toBeGreaterThan(0);
});

it('is no wider than nothing when there is no text', () => {
  expect(strokeTextWidth('', 10)).toBe(0);
});

it('says which character has no stroke', () => {
  expect(() => strokeTextWidth('5 µm', 10)).toThrow(
    new RangeError('No stroke is drawn for the character "Μ".'),
  );
});
