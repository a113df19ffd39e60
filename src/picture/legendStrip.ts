import type { Action } from '../grading/opinion';
import { texts } from '../texts/speech';
import { ACTION_MARKS, ACTION_ORDER, CHALK, HALO } from './actionMarks';
import { actionSign } from './stoneLabel';
import { stoneLine } from './stoneLine';
import { strokeText, strokeTextWidth } from './strokeText';
import { svgNumber } from './svgNumber';

/** A strip to be put below the photo. */
export interface LegendStrip {
  readonly svg: string;
  readonly heightPx: number;
}

/** How many stones each action was given, in the order of the legend; actions nobody got are left out. */
export function countActions(actions: readonly Action[]): [Action, number][] {
  return ACTION_ORDER.map((action): [Action, number] => [
    action,
    actions.filter((a) => a === action).length,
  ]).filter(([, count]) => count > 0);
}

/**
 * Draws the legend: for each action present a piece of its line, its sign, its name and how many stones got it.
 *
 * @param actions - One entry per stone.
 * @param widthPx - Width of the photo.
 * @param topPx - Where the strip begins, px from the photo's top.
 * @param pxPerDot - Photo pixels in one dot of the screen the picture is made for.
 * @returns SVG elements and the strip's height; height 0 without a stone.
 */
export function legendStrip(
  actions: readonly Action[],
  widthPx: number,
  topPx: number,
  pxPerDot: number,
): LegendStrip {
  const counts = countActions(actions);
  if (counts.length === 0) return { svg: '', heightPx: 0 };
  const [textPx, rowPx, marginPx, linePx] = [12, 36, 18, 2.6].map((dots) => dots * pxPerDot) as [
    number,
    number,
    number,
    number,
  ];
  let [x, y] = [marginPx, topPx + rowPx / 2 + marginPx / 3];
  const entries = counts.map(([action, count]) => {
    const mark = ACTION_MARKS[action];
    const words = `${count} ${texts().verdicts.actions[action]}`;
    const entryPx = 6.4 * textPx + strokeTextWidth(words, textPx) + 2.4 * marginPx;
    if (x > marginPx && x + entryPx > widthPx) [x, y] = [marginPx, y + rowPx];
    const line = stoneLine(`M${svgNumber(x)} ${svgNumber(y)}h${svgNumber(3.6 * textPx)}`, mark, linePx);
    const sign = actionSign(mark, x + 4.3 * textPx, y - 0.6 * textPx, 1.2 * textPx);
    const text = strokeText(words, { x: x + 6.4 * textPx, y: y - textPx / 2, heightPx: textPx });
    x += entryPx;
    return `${line}${sign}<g stroke="${CHALK}" stroke-width="1.4">${text}</g>`;
  });
  const heightPx = Math.ceil(y - topPx + rowPx / 2 + marginPx / 3);
  const ground = `<rect y="${svgNumber(topPx)}" width="${svgNumber(widthPx)}" height="${heightPx}" fill="${HALO}"/>`;
  return { svg: ground + entries.join(''), heightPx };
}
