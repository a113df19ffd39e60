import type { Mask, Raster } from '../image/raster';

/** A shadow beside a thing, in pixels of the picture it was read in. */
export interface ShadowBeside {
  /** How far it reaches past the outline: where half of full shadow ends, blur and penumbra averaged out. */
  readonly reachPx: number;
  /** Half of the thing's extent along the light. */
  readonly halfPx: number;
}

/** Lines along the light that are followed, over the middle part of the thing's width. */
const LINES = 15;
const MIDDLE = 0.5;
/** Blur mixes so many pixels at the outline with the thing. */
const SKIPPED_PX = 2;
/** No stone's shadow reaches farther, shares of its half extent. */
const FARTHEST = 2.2;
/** The tray is lit again where less than this share of full shadow is left. */
const LIT = 0.3;
/** A thing's mask may stand out so far past its smoothed outline. */
const ADJUSTED_PX = 6;
/** Fewest lines that see the tray; else neighbors hide the shadow. */
const FEWEST_LINES = 4;

/**
 * Follows the shadow that a thing throws on the tray away from the lamp.
 *
 * @param darkness - One channel: 0 on lit tray to 1 in full shadow.
 * @param outline - Rows and columns of the thing's outline in that picture.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 * @param taken - Pixels of this and all other things, on which no tray is seen.
 * @returns Null where neighbors or the picture's edge hide where the shadow ends; a reach without end where all around is
 *   as dark as a shadow.
 */
export function shadowBeside(
  darkness: Raster,
  outline: readonly (readonly [number, number])[],
  lampSide: readonly [number, number],
  taken: Mask,
): ShadowBeside | null {
  const [right, down] = [-lampSide[0], lampSide[1]];
  const along = outline.map(([row, column]) => row * down + column * right);
  const across = outline.map(([row, column]) => column * down - row * right);
  const [low, high] = [Math.min(...across), Math.max(...across)];
  const halfPx = (Math.max(...along) - Math.min(...along)) / 2;
  const lines: ShadowLine[] = [];
  for (let k = 0; k < LINES; k++) {
    const at = low + (0.5 + MIDDLE * ((k + 0.5) / LINES - 0.5)) * (high - low);
    const end = farthestCrossing(along, across, at);
    if (end === null) continue;
    lines.push((far) => [(end + far) * down - at * right, (end + far) * right + at * down]);
  }
  const reachPx = followed(darkness, taken, lines, FARTHEST * halfPx);
  return reachPx === null ? null : { reachPx, halfPx };
}

/** Row and column of a place on a line, by its distance from the outline. */
type ShadowLine = (farPx: number) => readonly [row: number, column: number];

/** Where a line along the light leaves a polygon for the last time; null when it passes by. */
function farthestCrossing(along: readonly number[], across: readonly number[], at: number): number | null {
  let farthest: number | null = null;
  for (let i = 0; i < along.length; i++) {
    const next = (i + 1) % along.length;
    const [a, b] = [across[i]! - at, across[next]! - at];
    if (a > 0 === b > 0) continue;
    const crossing = along[i]! + (a / (a - b)) * (along[next]! - along[i]!);
    if (farthest === null || crossing > farthest) farthest = crossing;
  }
  return farthest;
}

/** Where the lines together leave the shadow; infinite when they do not, null where too few of them see the tray. */
function followed(
  darkness: Raster,
  taken: Mask,
  lines: readonly ShadowLine[],
  farthestPx: number,
): number | null {
  const open = new Set(lines);
  let reach = SKIPPED_PX;
  for (let far = SKIPPED_PX; far < farthestPx; far++) {
    const seen: number[] = [];
    for (const line of open) {
      const value = darknessAt(darkness, taken, line(far));
      if (value !== null) seen.push(value);
      // Behind another thing or past the picture's edge lies none of this shadow.
      else if (far > ADJUSTED_PX) open.delete(line);
    }
    if (seen.length < FEWEST_LINES) {
      if (far <= ADJUSTED_PX) continue;
      return null;
    }
    seen.sort((a, b) => a - b);
    const dark = Math.min(1, Math.max(0, seen[seen.length >> 1]!));
    if (dark < LIT) return far === SKIPPED_PX ? 0 : reach;
    reach += dark;
  }
  return Number.POSITIVE_INFINITY;
}

function darknessAt(
  { width, height, data }: Raster,
  taken: Mask,
  [row, column]: readonly [number, number],
): number | null {
  const [y, x] = [Math.round(row), Math.round(column)];
  if (y < 0 || x < 0 || y >= height || x >= width) return null;
  return taken.data[y * width + x] === 1 ? null : data[y * width + x]!;
}

/**
 * Thickness of a thing by its shadow, taken for an ellipsoid that lies on the tray.
 *
 * A shadow of an ellipsoid of half height c reaches r = c t + √(a² + c² t²) − a past its outline, t the tangent of the
 * lamp's angle from the vertical; solved for 2 c. A disc's comes out twice too thick.
 *
 * @param shadow - Reach and half extent, of one unit.
 * @param tangent - t, above 0.
 * @returns Thickness in that unit.
 */
export function thicknessOf({ reachPx, halfPx }: ShadowBeside, tangent: number): number {
  if (!Number.isFinite(reachPx)) return reachPx;
  return (reachPx * (reachPx + 2 * halfPx)) / ((reachPx + halfPx) * tangent);
}
