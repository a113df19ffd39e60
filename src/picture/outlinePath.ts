import type { PixelPoint } from '../analysis/report';
import { svgNumber } from './svgNumber';

function distanceToChord(point: PixelPoint, from: PixelPoint, to: PixelPoint): number {
  const [dRow, dColumn] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dRow, dColumn);
  const [pRow, pColumn] = [point[0] - from[0], point[1] - from[1]];
  return length === 0 ? Math.hypot(pRow, pColumn) : Math.abs(dRow * pColumn - dColumn * pRow) / length;
}

function thinRun(run: readonly PixelPoint[], tolerancePx: number): readonly PixelPoint[] {
  const [first, last] = [run[0], run.at(-1)];
  if (first === undefined || last === undefined || run.length < 3) return run;
  let [farthest, farthestPx] = [0, 0];
  run.forEach((point, index) => {
    const distancePx = distanceToChord(point, first, last);
    if (distancePx > farthestPx) [farthest, farthestPx] = [index, distancePx];
  });
  if (farthestPx <= tolerancePx) return [first, last];
  const left = thinRun(run.slice(0, farthest + 1), tolerancePx);
  return [...left.slice(0, -1), ...thinRun(run.slice(farthest), tolerancePx)];
}

/**
 * Draws a closed polygon with no more points than the eye can tell.
 *
 * @param outline - Closed polygon, last point not repeated.
 * @param tolerancePx - Farthest a dropped point may lie from the drawn line, ≥ 0.
 * @returns SVG path data in photo pixels; empty for fewer than three points.
 * @see Douglas and Peucker 1973, "Algorithms for the reduction of the number of points required to represent a
 *   digitized line or its caricature".
 */
export function outlinePath(outline: readonly PixelPoint[], tolerancePx: number): string {
  const start = outline[0];
  if (start === undefined || outline.length < 3) return '';
  const half = Math.floor(outline.length / 2);
  const there = thinRun(outline.slice(0, half + 1), tolerancePx);
  const back = thinRun([...outline.slice(half), start], tolerancePx);
  const points = [...there, ...back.slice(1, -1)];
  return `M${points.map(([row, column]) => `${svgNumber(column)} ${svgNumber(row)}`).join('L')}Z`;
}
