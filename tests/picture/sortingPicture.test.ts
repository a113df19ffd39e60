import sharp from 'sharp';
import { expect, it } from 'vitest';
import type { Action } from '../../src/grading/opinion';
import { sortingPicture } from '../../src/picture/sortingPicture';
import { inventedReport } from '../helpers/inventedReport';

const report = inventedReport(12);
const graded = (actions: readonly Action[]) =>
  report.stones.map(({ id }) => ({ id, verdict: { action: actions[id % actions.length] ?? 'advance' } }));
const someGrades = graded(['advance', 'repeat', 'finished']);

it('is as large as the photo', () => {
  expect(sortingPicture(report, someGrades)).toContain('width="1800" height="1200" viewBox="0 0 1800 1200"');
});

it('draws every graded stone once and leaves out one without a grade', () => {
  const drawn = (svg: string) => [...svg.matchAll(/data-stone="(\d+)"/g)].map((match) => Number(match[1]));
  expect(drawn(sortingPicture(report, someGrades))).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  expect(drawn(sortingPicture(report, someGrades.slice(1)))).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
});

it('grows by the legend, and more so when more actions need another line', async () => {
  const heightOf = async (actions: readonly Action[]) => {
    const svg = sortingPicture(report, graded(actions), { legend: true, dotsAcross: 390 });
    return (await sharp(Buffer.from(svg)).metadata()).height ?? 0;
  };
  const few = await heightOf(['advance']);
  expect(few).toBeGreaterThan(report.heightPx);
  expect(await heightOf(['advance', 'repeat', 'finished', 'set-aside'])).toBeGreaterThan(few);
});

it('brings out one action and draws the others faintly', () => {
  const svg = sortingPicture(report, someGrades, { only: 'repeat' });
  expect([...svg.matchAll(/data-action="repeat">/g)]).toHaveLength(4);
  expect([...svg.matchAll(/data-action="(advance|finished)" opacity/g)]).toHaveLength(8);
});

it('marks the ball only when there is one', () => {
  expect(sortingPicture(report, someGrades)).toContain('data-ball');
  expect(sortingPicture({ ...report, ball: null }, someGrades)).not.toContain('data-ball');
});

it('can be drawn without fonts and is clear where nothing is marked', async () => {
  const svg = sortingPicture(report, someGrades);
  expect(svg).not.toContain('<text');
  const { data, info } = await sharp(Buffer.from(svg)).raw().toBuffer({ resolveWithObject: true });
  const alphaAt = (row: number, column: number) => data[(row * info.width + column) * info.channels + 3];
  expect(alphaAt(700, 400)).toBe(0);
  const edge = report.stones[0]?.outline[0] ?? [0, 0];
  expect(alphaAt(Math.round(edge[0]), Math.round(edge[1]))).toBeGreaterThan(200);
});

it('draws no stone and no legend on an empty tray', () => {
  const svg = sortingPicture({ ...report, stones: [] }, [], { legend: true });
  expect(svg).toContain('height="1200"');
  expect(svg).not.toContain('data-stone');
});
