import type { PhotoReport } from '../analysis/report';
import type { Action } from '../grading/opinion';
import type { WarningCode } from '../image/notice';
import { ACTION_MARKS } from './actionMarks';
import { ballMark } from './ballMark';
import { legendStrip } from './legendStrip';
import { outlinePath } from './outlinePath';
import { stoneBox } from './stoneBox';
import { stoneLabel } from './stoneLabel';
import { stoneLine } from './stoneLine';
import { svgNumber } from './svgNumber';
import { warningLetters } from './warningLetters';
import { warningMarks } from './warningMarks';
import { warningStrip } from './warningStrip';

/** The part of a stone's grade that is drawn. */
export interface GradedStone {
  readonly id: number;
  readonly verdict: { readonly action: Action };
}

export interface SortingPictureOptions {
  /** Dots of the screen or print across the photo's longer side; sets how thick lines and numbers are. */
  readonly dotsAcross?: number;
  /** True to add the legend below the photo, which makes the picture taller than the photo. */
  readonly legend?: boolean;
  /** Draw this action's stones in full and the others faintly; null for all in full. */
  readonly only?: Action | null;
  /** The warning whose marks are brought out; null for all alike. */
  readonly lit?: WarningCode | null;
}

/** Width of a plain line in dots: seen at arm's length, thin enough to leave the edge of the stone visible. */
const LINE_DOTS = 2.3;
const DEFAULT_DOTS_ACROSS = 900;

/**
 * Draws the sorting picture: each stone's outline in its verdict, its number and sign, the ball,
 * what warnings are about, and a legend.
 * It is transparent where it draws nothing, to be laid over the upright full-size photo.
 *
 * @param report - What was measured.
 * @param grades - One per stone; a stone without a grade is left out.
 * @param options - How large it will be shown, whether a legend is added, and what to bring out.
 * @returns An SVG document, `widthPx` wide and `heightPx` (plus the legend) high, that needs no font.
 */
export function sortingPicture(
  report: PhotoReport,
  grades: readonly GradedStone[],
  options: SortingPictureOptions = {},
): string {
  const { widthPx, heightPx } = report;
  const pxPerDot = Math.max(widthPx, heightPx) / (options.dotsAcross ?? DEFAULT_DOTS_ACROSS);
  const linePx = LINE_DOTS * pxPerDot;
  const actionOf = new Map(grades.map((grade) => [grade.id, grade.verdict.action]));
  const stones = report.stones.flatMap((stone) => {
    const action = actionOf.get(stone.id);
    if (action === undefined) return [];
    const mark = ACTION_MARKS[action];
    const line = stoneLine(outlinePath(stone.outline, 0.4 * pxPerDot), mark, linePx);
    const faint = options.only != null && options.only !== action ? ' opacity=".28"' : '';
    return [
      `<g data-stone="${stone.id}" data-action="${action}"${faint}>${line}${stoneLabel(stone, mark, pxPerDot)}</g>`,
    ];
  });
  const around = { widthPx, heightPx, stones: report.stones.map(({ outline }) => stoneBox(outline)) };
  const ball =
    report.ball === null ? '' : `<g data-ball="">${ballMark(report.ball, linePx, pxPerDot, around)}</g>`;
  const actions = options.legend === true ? report.stones.flatMap(({ id }) => actionOf.get(id) ?? []) : [];
  const strip = legendStrip(actions, widthPx, heightPx, pxPerDot);
  const warned = warningLetters(report);
  const marks = warningMarks(warned, pxPerDot, report, options.lit ?? null);
  const key = warningStrip(
    options.legend === true ? warned : [],
    widthPx,
    heightPx + strip.heightPx,
    pxPerDot,
  );
  const tallPx = svgNumber(heightPx + strip.heightPx + key.heightPx);
  const size = `width="${widthPx}" height="${tallPx}"`;
  const view = `viewBox="0 0 ${widthPx} ${tallPx}"`;
  const pen = 'fill="none" stroke-linejoin="round" stroke-linecap="round"';
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size} ${view} ${pen}>${stones.join('')}${ball}${marks}${strip.svg}${key.svg}</svg>`;
}
