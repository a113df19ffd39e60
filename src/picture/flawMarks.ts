import type { FlawReport } from '../analysis/report';
import { CHALK, HALO } from './actionMarks';
import { strokeText } from './strokeText';
import { svgNumber } from './svgNumber';

/** A shape for each kind of flaw, around a place and a half-size in pixels. */
const SHAPES: Readonly<Record<FlawReport['kind'], (x: number, y: number, half: number) => string>> = {
  pit: (x, y, half) =>
    `M${x - half} ${y}a${half} ${half} 0 1 0 ${2 * half} 0a${half} ${half} 0 1 0 ${-2 * half} 0Z`,
  chip: (x, y, half) =>
    `M${x} ${y - 1.2 * half}L${x + 1.2 * half} ${y}L${x} ${y + 1.2 * half}L${x - 1.2 * half} ${y}Z`,
  fracture: (x, y, half) => corners(x, y, half, half),
  scratch: (x, y, half) =>
    `M${x - half} ${y - 0.7 * half}H${x + half}M${x - half} ${y + 0.7 * half}H${x + half}`,
};

/** Four corners around a place. */
function corners(x: number, y: number, halfX: number, halfY: number): string {
  const arm = Math.min(halfX, halfY) / 2;
  const [left, right, top, bottom] = [x - halfX, x + halfX, y - halfY, y + halfY];
  return (
    `M${left} ${top + arm}V${top}H${left + arm}M${right - arm} ${top}H${right}V${top + arm}` +
    `M${right} ${bottom - arm}V${bottom}H${right - arm}M${left + arm} ${bottom}H${left}V${bottom - arm}`
  );
}

/** A line on either side of a scratch, along it. */
function alongside(path: readonly (readonly [number, number])[], gap: number): string {
  const [[row, column], [endRow, endColumn]] = [path[0]!, path.at(-1)!];
  const length = Math.hypot(endRow - row, endColumn - column) || 1;
  const [x, y] = [(-gap * (endRow - row)) / length, (gap * (endColumn - column)) / length].map(Math.round);
  const line = (sign: 1 | -1) =>
    `M${Math.round(column) + sign * x!} ${Math.round(row) + sign * y!}L${Math.round(endColumn) + sign * x!} ${Math.round(endRow) + sign * y!}`;
  return line(1) + line(-1);
}

/** Middle and half sides of the box around a line, in whole pixels. */
function boxOf(path: readonly (readonly [number, number])[], least: number, margin: number) {
  const rows = path.map(([row]) => row);
  const columns = path.map(([, column]) => column);
  const half = (values: readonly number[]) =>
    Math.round(Math.max(least, (Math.max(...values) - Math.min(...values)) / 2 + margin));
  const middle = (values: readonly number[]) => Math.round((Math.max(...values) + Math.min(...values)) / 2);
  return { x: middle(columns), y: middle(rows), halfX: half(columns), halfY: half(rows) };
}

/** Marks never get smaller than this many dots across, so that a thumb-sized crop still shows them. */
const SMALLEST_DOTS = 16;

/**
 * Marks flaws by kind: pit ringed, chip in a diamond, fracture between four corners, scratch between two lines along it;
 * each with its number in the list.
 *
 * @param flaws - Flaws of one stone.
 * @param mmPerPx - Scale of the photo.
 * @param pxPerDot - Photo pixels in one dot of the screen.
 * @param lit - Index of the flaw to bring out; null for none.
 * @returns SVG groups in photo pixels, to stand in an element with `fill="none"`.
 */
export function flawMarks(
  flaws: readonly FlawReport[],
  mmPerPx: number,
  pxPerDot: number,
  lit: number | null,
): string {
  return flaws
    .map((flaw, index) => {
      const sizePx = (flaw.diameterMm ?? flaw.lengthMm ?? 0) / mmPerPx;
      const half = Math.round((Math.max(SMALLEST_DOTS * pxPerDot, sizePx + 6 * pxPerDot) / 2) * 10) / 10;
      const around = flaw.path && boxOf(flaw.path, (SMALLEST_DOTS * pxPerDot) / 2, 3 * pxPerDot);
      const { x, y, halfX } = around ?? { x: Math.round(flaw.column), y: Math.round(flaw.row), halfX: half };
      const outline =
        flaw.path && flaw.kind === 'scratch'
          ? alongside(flaw.path, 7 * pxPerDot)
          : around
            ? corners(x, y, halfX, around.halfY)
            : SHAPES[flaw.kind](x, y, half);
      const shape = `<path d="${outline}"/>`;
      const heightPx = 10 * pxPerDot;
      const label = String(index + 1);
      const left = x + halfX + 3 * pxPerDot;
      const text = strokeText(label, { x: left, y: y - heightPx / 2, heightPx });
      const widthPx = (index === lit ? 3.2 : 1.6) * pxPerDot;
      const ring = [
        `<g stroke="${HALO}" stroke-width="${svgNumber(widthPx + 2.4 * pxPerDot)}">${shape}</g>`,
        `<g stroke="${CHALK}" stroke-width="${svgNumber(widthPx)}">${shape}</g>`,
        `<g stroke="${HALO}" stroke-width="4.6">${text}</g><g stroke="${CHALK}" stroke-width="1.7">${text}</g>`,
      ];
      return `<g data-flaw="${index + 1}">${ring.join('')}</g>`;
    })
    .join('');
}
