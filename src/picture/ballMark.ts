import type { BallReport } from '../analysis/report';
import { CHALK, HALO } from './actionMarks';
import { strokeText, strokeTextWidth } from './strokeText';
import { svgNumber } from './svgNumber';

/**
 * Marks the reference ball: a thin ring with four ticks, and its name below, or above where the photo ends.
 *
 * @param ball - Where the ball lies, photo pixels.
 * @param linePx - Width of a plain line, px.
 * @param pxPerDot - Photo pixels in one dot of the screen the picture is made for.
 * @param photoHeightPx - Height of the photo.
 * @returns SVG elements in photo pixels.
 */
export function ballMark(ball: BallReport, linePx: number, pxPerDot: number, photoHeightPx: number): string {
  const { row, column, radiusPx } = ball;
  const ringPx = radiusPx + 2.5 * linePx;
  const tickPx = ringPx + 3.5 * linePx;
  const ring = `<circle cx="${svgNumber(column)}" cy="${svgNumber(row)}" r="${svgNumber(ringPx)}"/>`;
  const ticks = [0, 90, 180, 270].map((turnDeg) => {
    const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
    const at = (px: number) => `${svgNumber(column + px * cos)} ${svgNumber(row + px * sin)}`;
    return `<path d="M${at(ringPx)}L${at(tickPx)}"/>`;
  });
  const heightPx = 9 * pxPerDot;
  const below = row + tickPx + 5 * pxPerDot;
  const y = below + 1.4 * heightPx < photoHeightPx ? below : row - tickPx - 5 * pxPerDot - heightPx;
  const place = { x: column - strokeTextWidth('BALL', heightPx) / 2, y, heightPx };
  const word = strokeText('BALL', place);
  const drawn = ring + ticks.join('');
  return [
    `<g stroke="${HALO}" stroke-width="${svgNumber(2.2 * linePx)}">${drawn}</g>`,
    `<g stroke="${CHALK}" stroke-width="${svgNumber(0.8 * linePx)}">${drawn}</g>`,
    `<g stroke="${HALO}" stroke-width="4.4">${word}</g><g stroke="${CHALK}" stroke-width="1.5">${word}</g>`,
  ].join('');
}
