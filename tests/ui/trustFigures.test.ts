import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { NOT_REACHED, REACHED } from '../../src/ui/help/trustFigures';

const rows = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('| '));
const rowOf = (start: string) => rows.filter((line) => line.startsWith(`| ${start}`));

it.each([...NOT_REACHED, ...REACHED])('says "$said" as the bench printed it', ({ row, holds }) => {
  const found = rowOf(row);
  expect(found, row).not.toEqual([]);
  expect(
    found.some((line) => holds.every((text) => line.includes(text))),
    found.join('\n'),
  ).toBe(true);
});

it('calls nothing well done that misses its target', () => {
  const missed = REACHED.filter(({ holds }) => holds.includes('met')).filter(({ row }) =>
    rowOf(row).every((line) => line.includes('**not met**')),
  );
  expect(missed).toEqual([]);
});
