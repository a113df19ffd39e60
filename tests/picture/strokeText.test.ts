import { expect, it } from 'vitest';
import { ACTION_MARKS } from '../../src/picture/actionMarks';
import { strokeText, strokeTextWidth } from '../../src/picture/strokeText';

it('places one glyph after the other', () => {
  // "11": width 4.8, spacing 2.4 glyph units; at 20 px a unit is 2 px.
  expect(strokeTextWidth('11', 20)).toBeCloseTo((4.8 + 2.4 + 4.8) * 2, 9);
  expect(strokeText('11', { x: 5, y: 7, heightPx: 20 })).toContain('translate(5 7) scale(2)');
  expect(strokeText('11', { x: 5, y: 7, heightPx: 20 })).toContain('translate(7.2 0)');
});

it('doubles the width with the height', () => {
  expect(strokeTextWidth('BALL', 24)).toBeCloseTo(2 * strokeTextWidth('BALL', 12), 9);
});

it('can write every action in lower or upper case', () => {
  for (const { word } of Object.values(ACTION_MARKS)) {
    expect(strokeText(word, { x: 0, y: 0, heightPx: 10 })).toBe(
      strokeText(word.toUpperCase(), { x: 0, y: 0, heightPx: 10 }),
    );
  }
});

it('is no wider than nothing when there is no text', () => {
  expect(strokeTextWidth('', 10)).toBe(0);
});

it('says which character has no stroke', () => {
  expect(() => strokeTextWidth('5 µm', 10)).toThrow(
    new RangeError('No stroke is drawn for the character "Μ".'),
  );
});
