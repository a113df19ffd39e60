import type { BallReport } from '../analysis/report';
import type { Box } from '../image/raster';
import { texts } from '../texts/speech';
import { CHALK, HALO } from './actionMarks';
import { strokeText, strokeTextWidth } from './strokeText';
import { svgNumber } from './svgNumber';

/** What the word beside the ball must keep clear of. */
export interface BallSurroundings {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Boxes around the stones. */
  readonly stones: readonly Box[];
}

const WORD_DOTS = 9;

function overlap(one: Box, other: Box): boolean {
  const rows = one.row < other.row + other.height && other.row < one.row + one.height;
  return rows && one.column < other.column + other.width && other.column < one.column + one.width;
}

/** Below, above, left or right of the ring, wherever no stone lies; null when the ball is hemmed in. */
function wordBox(
  word: string,
  { row, column }: BallReport,
  reachPx: number,
  heightPx: number,
  around: BallSurroundings,
): Box | null {
  const width = strokeTextWidth(word, heightPx);
  const gap = heightPx / 2;
  const corners = [
    [row + reachPx + gap, column - width / 2],
    [row - reachPx - gap - heightPx, column - width / 2],
    [row - heightPx / 2, column - reachPx - gap - width],
    [row - heightPx / 2, column + reachPx + gap],
  ] as const;
  const boxes = corners.map(([top, left]): Box => ({ row: top, column: left, width, height: heightPx }));
  const inside = (box: Box) =>
    box.row > gap &&
    box.column > gap &&
    box.row + box.height + gap < around.heightPx &&
    box.column + box.width + gap < around.widthPx;
  return boxes.find((box) => inside(box) && !around.stones.some((stone) => overlap(box, stone))) ?? null;
}

/**
 * Marks the reference ball: a thin ring with four ticks, and its name where there is room for it.
 *
 * @param ball - Where the ball lies, photo pixels.
 * @param linePx - Width of a plain line, px.
 * @param pxPerDot - Photo pixels in one dot of the screen the picture is made for.
 * @param around - Size of the photo and where its stones lie.
 * @returns SVG elements in photo pixels.
 */
export function ballMark(
  ball: BallReport,
  linePx: number,
  pxPerDot: number,
  around: BallSurroundings,
): string {
  const { row, column, radiusPx } = ball;
  const ringPx = radiusPx + 2.5 * linePx;
  const tickPx = ringPx + 3.5 * linePx;
  const ring = `<circle cx="${svgNumber(column)}" cy="${svgNumber(row)}" r="${svgNumber(ringPx)}"/>`;
  const ticks = [0, 90, 180, 270].map((turnDeg) => {
    const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
    const at = (px: number) => `${svgNumber(column + px * cos)} ${svgNumber(row + px * sin)}`;
    return `<path d="M${at(ringPx)}L${at(tickPx)}"/>`;
  });
  const drawn = ring + ticks.join('');
  const marks = [
    `<g stroke="${HALO}" stroke-width="${svgNumber(2.2 * linePx)}">${drawn}</g>`,
    `<g stroke="${CHALK}" stroke-width="${svgNumber(0.8 * linePx)}">${drawn}</g>`,
  ];
  const said = texts().tray.ball;
  const box = wordBox(said, ball, tickPx, WORD_DOTS * pxPerDot, around);
  if (box !== null) {
    const word = strokeText(said, { x: box.column, y: box.row, heightPx: box.height });
    marks.push(`<g data-word="" stroke="${HALO}" stroke-width="4.4">${word}</g>`);
    marks.push(`<g stroke="${CHALK}" stroke-width="1.5">${word}</g>`);
  }
  return marks.join('');
}
