import { expect, it } from 'vitest';
import { ACTIONS_BEST_FIRST } from '../../src/grading/opinion';
import { ACTION_MARKS, ACTION_ORDER, CHALK, HALO } from '../../src/picture/actionMarks';
import { contrastRatio } from '../helpers/contrastRatio';
import { seenWithoutCones } from '../helpers/seenWithoutCones';

const marks = ACTION_ORDER.map((action) => ({ action, ...ACTION_MARKS[action] }));
const pairs = marks.flatMap((one, index) => marks.slice(index + 1).map((other) => [one, other] as const));

it('lists every action exactly once', () => {
  expect([...ACTION_ORDER].sort()).toEqual([...ACTIONS_BEST_FIRST].sort());
});

it('tells black from white by 21 to 1', () => {
  // WCAG 2.2, definition of contrast ratio: 1:1 to 21:1.
  expect(contrastRatio('#000000', '#ffffff')).toBeCloseTo(21, 9);
});

it('keeps every line and number readable on the halo', () => {
  // WCAG 2.2, success criterion 1.4.6: 7:1 for text; we ask it of lines too.
  for (const { color } of [...marks, { color: CHALK }]) expect(contrastRatio(color, HALO)).toBeGreaterThan(7);
});

it('gives no two actions the same line pattern or the same sign', () => {
  const pattern = ({ dashes, cap, split }: (typeof marks)[number]) => JSON.stringify([dashes, cap, split]);
  for (const [one, other] of pairs) {
    expect(pattern(one)).not.toBe(pattern(other));
    expect(one.glyph).not.toBe(other.glyph);
  }
});

it('keeps the colors apart for eyes without long or without middle wavelength cones', () => {
  // CIE 1976: a difference of about 2.3 is just noticeable; ten times that is seen at a glance (our own demand).
  for (const kind of ['protan', 'deutan'] as const) {
    for (const [one, other] of pairs) {
      const apart = seenWithoutCones(one.color, kind).map(
        (v, i) => v - (seenWithoutCones(other.color, kind)[i] ?? 0),
      );
      expect(Math.hypot(...apart), `${kind}: ${one.action} and ${other.action}`).toBeGreaterThan(23);
    }
  }
});
