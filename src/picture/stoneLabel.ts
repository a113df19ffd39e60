import type { PixelPoint } from '../analysis/report';
import type { ActionMark } from './actionMarks';
import { CHALK, HALO } from './actionMarks';
import { stoneBox } from './stoneBox';
import { strokeText, strokeTextWidth } from './strokeText';
import { svgNumber } from './svgNumber';

/** Height of a number as a share of its stone's smaller side. */
const NUMBER_SHARE = 0.3;
/** Smallest and largest height of a number in dots of the screen: read at arm's length, never covering a stone. */
const SMALLEST_DOTS = 15;
const LARGEST_DOTS = 34;

function inked(draw: string, color: string, widthUnits: number): string {
  const halo = `<g stroke="${HALO}" stroke-opacity=".85" stroke-width="${svgNumber(widthUnits + 2.6)}">${draw}</g>`;
  return `${halo}<g stroke="${color}" stroke-width="${svgNumber(widthUnits)}">${draw}</g>`;
}

/** Draws an action's sign on a square of `sidePx` whose upper-left corner is given. */
export function actionSign(mark: ActionMark, x: number, y: number, sidePx: number): string {
  const place = `translate(${svgNumber(x)} ${svgNumber(y)}) scale(${svgNumber(sidePx / 10)})`;
  return inked(`<path transform="${place}" d="${mark.glyph}"/>`, mark.color, 1.5);
}

/**
 * Draws a stone's number with its action's sign: below the number, or beside it on a wide stone.
 *
 * @param stone - Number, center and outline of the stone.
 * @param mark - How the action is drawn.
 * @param pxPerDot - Photo pixels in one dot of the screen the picture is made for.
 * @returns SVG groups in photo pixels.
 */
export function stoneLabel(
  stone: { readonly id: number; readonly center: PixelPoint; readonly outline: readonly PixelPoint[] },
  mark: ActionMark,
  pxPerDot: number,
): string {
  const box = stoneBox(stone.outline);
  const wished = NUMBER_SHARE * Math.min(box.width, box.height);
  const heightPx = Math.min(LARGEST_DOTS * pxPerDot, Math.max(SMALLEST_DOTS * pxPerDot, wished));
  const [signPx, gapPx] = [0.8 * heightPx, 0.42 * heightPx];
  const widthPx = strokeTextWidth(String(stone.id), heightPx);
  const [row, column] = stone.center;
  const beside = box.width > 1.25 * box.height;
  const left = column - (beside ? (widthPx + gapPx + signPx) / 2 : widthPx / 2);
  const top = row - (beside ? heightPx / 2 : (heightPx + gapPx + signPx) / 2);
  const number = inked(strokeText(String(stone.id), { x: left, y: top, heightPx }), CHALK, 1.7);
  const sign = beside
    ? actionSign(mark, left + widthPx + gapPx, row - signPx / 2, signPx)
    : actionSign(mark, column - signPx / 2, top + heightPx + gapPx, signPx);
  return number + sign;
}
