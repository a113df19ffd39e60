import type { HighlightFit, HighlightProblem } from './highlightFit';
import { curvature, type HighlightWindow, slopeField } from './highlightModel';

/** One point of the lamp's outline as a stone mirrors it. */
export interface OutlinePoint {
  /** Turn around the lamp's center in the plane of slopes, radians from right toward down. */
  readonly turnRad: number;
  /** How far the outline lies off that of an evenly curved surface, slope across the lamp's edge. */
  readonly offset: number;
  /** Slope that one pixel of the window makes there, across the edge. */
  readonly slopePerPx: number;
  /** Fall of the light there, shares of a perfect polish per pixel of the window. */
  readonly steepness: number;
  /** Where the measured outline lies, window pixels. */
  readonly row: number;
  readonly column: number;
}

/** Rays from the center, evenly spaced in the plane of slopes. */
export const OUTLINE_RAYS = 48;
/** Steps along a ray, window pixels. */
const STEP_PX = 0.1;

/**
 * Traces where the lamp's image falls to half its height, along rays from its center, and what that says of the slope.
 *
 * On a surface whose slope is K·x + w(x) the outline lies where K·x + w reaches the lamp's edge. Along one ray the
 * smooth fit's outline and the measured one are both half a lobe high, so that the slope w across the edge is what
 * K·x changes between the two. Blur and roughness move both alike.
 *
 * @param problem - The window and its optics.
 * @param fit - Its fit; an uneven curvature that it found is no wave.
 * @returns Up to 48 points in the order of their turns; rays on which an outline leaves the window are left out.
 */
export function lampOutline({ window, optics }: HighlightProblem, fit: HighlightFit): OutlinePoint[] {
  const { shape, lobe } = fit;
  const [kxx, kxy, kyy] = curvature(shape).map((k) => k * window.stepPx) as [number, number, number];
  const determinant = kxx * kyy - kxy * kxy;
  const unbend = (x: number, y: number) =>
    [(kyy * x - kxy * y) / determinant, (kxx * y - kxy * x) / determinant] as const;
  const level = 0.5 * lobe.reduce((most, value) => Math.max(most, value), 0);
  const shares = window.values.map((value, i) => (value - fit.body[i]!) / fit.amplitude);
  const modeled = slopeField(shape, optics, window.stepPx);
  const points: OutlinePoint[] = [];
  for (let k = 0; k < OUTLINE_RAYS; k++) {
    const turnRad = (2 * Math.PI * k) / OUTLINE_RAYS;
    const ray = unit(unbend(Math.cos(turnRad), Math.sin(turnRad)));
    const expected = nearestFall({ ...window, values: lobe }, shape, ray, level, null);
    const found = expected && nearestFall({ ...window, values: shares }, shape, ray, level, expected);
    if (!found) continue;
    const [down, right] = [shape.row + expected * ray[1], shape.column + expected * ray[0]];
    const at = (y: number, x: number) => between({ ...window, values: lobe }, y, x);
    const rise = [
      at(down, right + 0.5) - at(down, right - 0.5),
      at(down + 0.5, right) - at(down - 0.5, right),
    ];
    const steepness = Math.hypot(rise[0]!, rise[1]!);
    // The lobe falls along K⁻¹ times its fall by pixels: that is the direction across the lamp's edge.
    const across = unit(unbend(-rise[0]!, -rise[1]!));
    const [from, to] = [
      modeled(expected * ray[1], expected * ray[0]),
      modeled(found * ray[1], found * ray[0]),
    ];
    const offset = across[0] * (to[0] - from[0]) + across[1] * (to[1] - from[1]);
    const slopePerPx =
      Math.hypot(kxx * rise[0]! + kxy * rise[1]!, kxy * rise[0]! + kyy * rise[1]!) / steepness;
    if (!Number.isFinite(offset + slopePerPx)) continue;
    points.push({
      turnRad,
      offset: -offset * optics.sourceSlope,
      slopePerPx,
      steepness,
      row: shape.row + found * ray[1],
      column: shape.column + found * ray[0],
    });
  }
  return points;
}

function unit([x, y]: readonly [number, number]): readonly [number, number] {
  const length = Math.hypot(x, y);
  return [x / length, y / length];
}

type Picture = Pick<HighlightWindow, 'width' | 'height'> & { readonly values: ArrayLike<number> };

/** Distance along a ray at which the picture falls below a level: the first one, or the one nearest to a distance. */
function nearestFall(
  picture: Picture,
  from: { readonly row: number; readonly column: number },
  [x, y]: readonly [number, number],
  level: number,
  near: number | null,
): number | null {
  let last = between(picture, from.row, from.column);
  let best: number | null = null;
  for (let distance = STEP_PX; ; distance += STEP_PX) {
    const value = between(picture, from.row + distance * y, from.column + distance * x);
    if (Number.isNaN(value)) return best;
    if (last >= level && value < level) {
      const at = distance - (STEP_PX * (level - value)) / (last - value);
      if (near === null) return at;
      if (best === null || Math.abs(at - near) < Math.abs(best - near)) best = at;
    }
    last = value;
  }
}

/** Value between four pixels, straight in rows and columns; NaN outside. */
function between({ values, width, height }: Picture, row: number, column: number): number {
  const [top, left] = [Math.floor(row), Math.floor(column)];
  if (top < 0 || left < 0 || top >= height - 1 || left >= width - 1) return Number.NaN;
  const [down, right] = [row - top, column - left];
  const i = top * width + left;
  const upper = (1 - right) * values[i]! + right * values[i + 1]!;
  const lower = (1 - right) * values[i + width]! + right * values[i + width + 1]!;
  return (1 - down) * upper + down * lower;
}
