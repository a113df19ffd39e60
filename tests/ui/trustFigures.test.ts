import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { help } from '../../src/texts/english/help';
import { help as hilfe } from '../../src/texts/german/help';
import { NOT_REACHED, REACHED } from '../../src/ui/help/trustFigures';
import { numbersIn } from '../helpers/numbersIn';

const rows = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| '));
const rowOf = (start: string) => rows.filter((line) => line.startsWith(`| ${start}`));

const figures = [...NOT_REACHED, ...REACHED].map(({ said, ...where }) => ({
  ...where,
  english: said(help),
  german: said(hilfe),
}));

it.each(figures)('says "$english" as the bench printed it', ({ row, holds }) => {
  const found = rowOf(row);
  expect(found, row).not.toEqual([]);
  expect(
    found.some((line) => holds.every((text) => line.includes(text))),
    found.join('\n'),
  ).toBe(true);
});

it.each(figures)('says the same figures in German: "$german"', ({ english, german }) => {
  expect(german).not.toBe(english);
  expect(numbersIn(english)).not.toEqual([]);
  expect(numbersIn(german)).toEqual(numbersIn(english));
});

it('calls nothing well done that misses its target', () => {
  const missed = REACHED.filter(({ holds }) => holds.includes('met')).filter(({ row }) =>
    rowOf(row).every((line) => line.includes('**not met**')),
  );
  expect(missed).toEqual([]);
});
