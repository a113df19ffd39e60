import sharp from 'sharp';
import { expect, it } from 'vitest';
import { warning, warningAt } from '../../src/image/notice';
import { sortingPicture } from '../../src/picture/sortingPicture';
import { warningLetters } from '../../src/picture/warningLetters';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';
import { speak } from '../../src/texts/speech';
import { inventedReport } from '../helpers/inventedReport';

const place = { row: 640, column: 1500, radiusPx: 14 };
const report = {
  ...inventedReport(6),
  warnings: [
    warning('rig-unchecked'),
    warningAt('second-light', { marks: [place] }),
    warningAt('wet-stones', { stones: [2, 5] }),
  ],
};
const grades = report.stones.map(({ id }) => ({ id, verdict: { action: 'repeat' as const } }));

it('gives letters only to warnings that are about a place, in their order', () => {
  const lettered = warningLetters(report);
  expect(lettered.map(({ code, letter }) => [code, letter])).toEqual([
    ['second-light', 'A'],
    ['wet-stones', 'B'],
  ]);
  expect(lettered[0]!.places).toEqual([place]);
});

it('puts a mark around every stone that a warning names', () => {
  const [, wet] = warningLetters(report);
  expect(wet!.places).toHaveLength(2);
  wet!.places.forEach(({ row, column, radiusPx }, k) => {
    const { outline, center } = report.stones[k === 0 ? 1 : 4]!;
    expect(Math.hypot(row - center[0], column - center[1])).toBeLessThan(0.3 * radiusPx);
    const farthest = Math.max(...outline.map((point) => Math.hypot(point[0] - row, point[1] - column)));
    expect(radiusPx).toBeGreaterThan(0.7 * farthest);
    expect(radiusPx).toBeLessThan(1.3 * farthest);
  });
});

it('leaves out a stone that is not in the report', () => {
  const absent = { ...report, warnings: [warningAt('wet-stones', { stones: [99] })] };
  expect(warningLetters(absent)).toEqual([]);
});

it('draws the marks into the sorting picture and leaves the place itself clear', async () => {
  const svg = sortingPicture(report, grades);
  expect([...svg.matchAll(/data-warning="([a-z-]+)"/g)].map(([, code]) => code)).toEqual([
    'second-light',
    'wet-stones',
  ]);
  const { data, info } = await sharp(Buffer.from(svg)).raw().toBuffer({ resolveWithObject: true });
  const opacityAt = (row: number, column: number) => data[(row * info.width + column) * info.channels + 3]!;
  expect(opacityAt(place.row, place.column)).toBe(0);
  // Along each diagonal an arrowhead is met, along the rows and columns none.
  const most = (down: number, right: number) =>
    Math.max(
      ...Array.from({ length: 25 }, (_, k) =>
        opacityAt(Math.round(place.row + down * (16 + k)), Math.round(place.column + right * (16 + k))),
      ),
    );
  for (const [down, right] of [
    [0.71, 0.71],
    [0.71, -0.71],
    [-0.71, 0.71],
    [-0.71, -0.71],
  ] as const) {
    expect(most(down, right)).toBeGreaterThan(200);
  }
  expect(most(0, 1)).toBe(0);
});

it('brings out one warning and draws the others faintly', () => {
  const svg = sortingPicture(report, grades, { lit: 'wet-stones' });
  expect(svg).toMatch(/data-warning="second-light" opacity/);
  expect(svg).toMatch(/data-warning="wet-stones">/);
});

it('explains the letters below the legend of a picture that is saved', () => {
  const heightOf = (svg: string) => Number(/ height="([\d.]+)"/.exec(svg)![1]);
  const withKey = sortingPicture(report, grades, { legend: true });
  const without = sortingPicture({ ...report, warnings: [] }, grades, { legend: true });
  expect(heightOf(withKey)).toBeGreaterThan(heightOf(without));
  expect(withKey).toContain('data-key');
  expect(without).not.toContain('data-warning');
});

it('has words for all warnings, in characters for which strokes are drawn', () => {
  const { warningWords } = english.tray;
  const marked = Object.keys(warningWords) as (keyof typeof warningWords)[];
  const all = { ...report, warnings: marked.map((code) => warningAt(code, { marks: [place] })) };
  const inEnglish = sortingPicture(all, grades, { legend: true });
  expect(inEnglish.match(/data-warning=/g)).toHaveLength(marked.length);
  speak({ language: 'de', texts: german });
  const inGerman = sortingPicture(all, grades, { legend: true });
  speak({ language: 'en', texts: english });
  expect(inGerman.match(/data-warning=/g)).toHaveLength(marked.length);
  expect(inGerman).not.toBe(inEnglish);
});
