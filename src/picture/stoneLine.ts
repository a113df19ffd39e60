import type { ActionMark } from './actionMarks';
import { HALO } from './actionMarks';
import { svgNumber } from './svgNumber';

/**
 * Draws an outline in its action's color and pattern over a dark halo, so that it shows on dark and light stones.
 *
 * @param path - SVG path data of the outline.
 * @param mark - How the action is drawn.
 * @param linePx - Width of a plain line, px.
 * @returns Two or three SVG paths.
 */
export function stoneLine(path: string, mark: ActionMark, linePx: number): string {
  const widthPx = linePx * mark.weight;
  const halo = `<path d="${path}" stroke="${HALO}" stroke-opacity=".82" stroke-width="${svgNumber(widthPx + 1.3 * linePx)}"/>`;
  const dashes = mark.dashes.map((dash) => svgNumber(dash * widthPx)).join(' ');
  const pattern = dashes === '' ? '' : ` stroke-dasharray="${dashes}" stroke-linecap="${mark.cap}"`;
  const line = `<path d="${path}" stroke="${mark.color}" stroke-width="${svgNumber(widthPx)}"${pattern}/>`;
  const split = `<path d="${path}" stroke="${HALO}" stroke-width="${svgNumber(linePx * 0.6)}"/>`;
  return halo + line + (mark.split ? split : '');
}
