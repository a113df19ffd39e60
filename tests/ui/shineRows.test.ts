import { expect, it } from 'vitest';
import { glossOf } from '../../src/grading/gloss';
import { shineRange } from '../../src/grading/shineRange';
import { shineRows } from '../../src/ui/stone/shineRows';
import { highlightOf } from '../helpers/measuredStone';

const rowsOf = (alpha: number, body: number | null, doubt = 0.3) =>
  shineRows(shineRange(glossOf(highlightOf(alpha, doubt).byIndex, 'quartz'), body));
const row = (rows: ReturnType<typeof rowsOf>, name: string) => rows.find((one) => one.name === name)!;

it('names eight figures, each with a line in plain words', () => {
  const rows = rowsOf(0.01, 0.2);
  expect(rows.map(({ name }) => name)).toEqual([
    ...['Gloss at 20°', 'Gloss at 60°', 'Gloss at 85°', 'Image clarity', 'Distinctness of image', 'Haze'],
    ...['Contrast to the eye', 'Distinctness to the eye'],
  ]);
  for (const { value, words } of rows) {
    expect(value).toMatch(/^\d/);
    expect(words).toMatch(/\.$/);
  }
});

it('says how far each figure could be off', () => {
  const gloss = row(rowsOf(0.03, null), 'Gloss at 60°');
  const [low, high] = gloss.range!.split(' to ').map(Number);
  expect(low).toBeLessThan(Number(gloss.value));
  expect(high).toBeGreaterThan(Number(gloss.value));
});

it('leaves out a range that would only repeat the value', () => {
  expect(row(rowsOf(0.3, null), 'Image clarity')).toMatchObject({ value: '0 %', range: null });
});

it('gives no haze on a dull stone, and no contrast when the stone itself was not seen', () => {
  const rows = rowsOf(0.1, null);
  expect(row(rows, 'Haze')).toMatchObject({ value: null, range: null });
  expect(row(rows, 'Haze').words).toContain('Says nothing on a stone this dull.');
  expect(row(rows, 'Contrast to the eye').value).toBeNull();
  expect(row(rows, 'Contrast to the eye').words).toContain('Not known for this stone');
});

it('says of a dull stone that only near-mirrors have image clarity', () => {
  expect(row(rowsOf(0.1, null), 'Image clarity').words).toContain('Only near-mirrors have any.');
});

it('lists the finer combs from coarse to fine', () => {
  const { words } = row(rowsOf(0.002, 0.2), 'Image clarity');
  const listed = /⅛ mm: ([\d., ]+) %/.exec(words)![1]!.split(', ').map(Number);
  expect(listed.length).toBe(4);
  expect(listed).toEqual([...listed].sort((a, b) => b - a));
});
