import { expect, it } from 'vitest';
import { isRightToLeft, linesOf, mostWidthPx, plainLine, textLine } from '../../src/picture/keepsakeText';

const INK = { sizePx: 40, color: '#000000' } as const;

it('breaks at spaces and leaves out what does not fit', () => {
  expect(linesOf('one two three', 10, 45, 3)).toEqual(['one', 'two', 'three']);
  expect(linesOf('one two three four', 10, 45, 2)).toEqual(['one', 'two…']);
  expect(linesOf('short', 10, 400, 2)).toEqual(['short']);
});

it('keeps every line within its room, whatever the words', () => {
  const words = [
    'W'.repeat(200),
    'a b '.repeat(50),
    'שלום '.repeat(40),
    '石'.repeat(200),
    '👩‍👩‍👧‍👦'.repeat(60),
  ];
  for (const text of words) {
    for (const most of [1, 2, 3]) {
      const lines = linesOf(text, 32, 700, most);
      expect(lines).toHaveLength(most);
      for (const line of lines) expect(mostWidthPx(line, 32)).toBeLessThanOrEqual(700);
      expect(lines.at(-1)).toMatch(/…$/);
    }
  }
});

it('never cuts inside what is seen as one character', () => {
  const family = '👩‍👩‍👧‍👦';
  expect(linesOf(family.repeat(6), 10, 40, 9).join('')).toBe(family.repeat(6));
  for (const line of linesOf(family.repeat(6), 10, 40, 9)) expect(line.length % family.length).toBe(0);
});

it('makes one line of any text and drops what a picture cannot hold', () => {
  expect(plainLine(' a\n\tb\u0000c\u202Ed\ud800 ')).toBe('a b c d');
  expect(linesOf(' \u0007 ', 10, 100, 2)).toEqual([]);
});

it('tells by the first letter which way a text is read', () => {
  expect(isRightToLeft('12. אבן the green one')).toBe(true);
  expect(isRightToLeft('الحجر')).toBe(true);
  expect(isRightToLeft('the green אבן')).toBe(false);
  expect(isRightToLeft('42')).toBe(false);
});

it('anchors a text that is read from the right at the same side of the picture', () => {
  expect(textLine('אבן', 5, 9, INK)).toMatch(/text-anchor="end" direction="rtl"/);
  expect(textLine('stone', 5, 9, INK)).toContain('text-anchor="start"');
  expect(textLine('אבן', 5, 9, { ...INK, anchor: 'middle' })).toContain('text-anchor="middle"');
});

it('writes signs as XML wants them', () => {
  expect(textLine('<b> & "c"', 0, 0, INK)).toMatch(/>&lt;b&gt; &amp; &quot;c&quot;<\/text>$/);
});
