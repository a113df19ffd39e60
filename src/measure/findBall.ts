import { nthSmallest } from '../image/nthSmallest';
import type { Raster } from '../image/raster';
import type { Circle } from './circleFit';
import { samplePixel } from './samplePixel';

/** A place where the reference ball may lie. */
export interface BallCandidate extends Circle {
  /** Share of the circle with a clear step from dark inside to bright outside, weighted by its height, 0 to 1. */
  readonly score: number;
}

/** Smallest ball, small-picture pixels, and largest, share of the picture's shorter side. */
const RADIUS_RANGE = { leastPx: 7, mostShare: 0.42 };
const RADIUS_STEP = 1.1;
const ANGLES = 48;
/** Bright spots looked at, and how far they lie apart: a clipped highlight is a plateau, of which one pixel stands for all. */
const MOST_SPOTS = 24;
const SPOTS_APART_PX = 6;
/** Radiance below which it does not matter how dark the surroundings of a bright spot are. */
const DIM = 0.005;
/** The highlight of a lamp up to 75° off the camera lies within 0.61 radii of the center; the ball's is sought as far. */
const HIGHLIGHT_REACH = 0.66;
/** Step in ln radiance that counts as a full edge. */
const FULL_STEP = 0.7;
const LEAST_SCORE = 0.3;
/** Outside the rim lies tray: a step up to less than this share of the picture's usual light counts for less. */
const TRAY_SHARE = 0.5;

/**
 * Looks for dark, round things with one small bright highlight in a small picture of the tray.
 *
 * @param light - One-channel radiance, 0 to 1, of the whole photo made small.
 * @param near - A point on the ball when a person showed it; then only circles around it are tried.
 * @returns Circles as they are found, the ball's usually first; one thing can be found several times.
 */
export function* ballCandidates(
  light: Raster,
  near: { row: number; column: number } | null,
): Generator<BallCandidate> {
  const logLight: Raster = { ...light, data: light.data.map((value) => Math.log(Math.max(value, 0.002))) };
  const usual = nthSmallest(Float32Array.from(logLight.data), logLight.data.length >> 1)!;
  for (const spot of brightSpots(light)) {
    const best = bestCircle(logLight, spot, near, usual + Math.log(TRAY_SHARE));
    if (best && best.score >= LEAST_SCORE) yield best;
  }
}

/**
 * The best of each thing's circles.
 *
 * @param found - Circles of one picture.
 * @returns Those of which none lies on a better one, best first.
 */
export function bestBalls(found: readonly BallCandidate[]): BallCandidate[] {
  const sorted = [...found].sort((a, b) => b.score - a.score);
  return sorted.filter(
    (ball, i) => !sorted.slice(0, i).some((other) => distance(other, ball) < other.radiusPx),
  );
}

const distance = (a: { row: number; column: number }, b: { row: number; column: number }) =>
  Math.hypot(a.row - b.row, a.column - b.column);

/** Bright pixels, those first that stand highest above what lies a few pixels away: nothing is as dark as the ball's glass. */
function brightSpots(light: Raster): { row: number; column: number }[] {
  const { width, height, data } = light;
  const spots: { row: number; column: number; ratio: number }[] = [];
  for (let y = 3; y < height - 3; y++) {
    for (let x = 3; x < width - 3; x++) {
      const i = y * width + x;
      const value = data[i]!;
      if (value < 0.02 || value < neighborhoodMax(data, i, width)) continue;
      const around = Math.min(data[i - 3]!, data[i + 3]!, data[i - 3 * width]!, data[i + 3 * width]!);
      if (value > 1.8 * around) spots.push({ row: y, column: x, ratio: value / (around + DIM) });
    }
  }
  const kept: typeof spots = [];
  for (const spot of spots.sort((a, b) => b.ratio - a.ratio)) {
    if (kept.length === MOST_SPOTS) break;
    if (!kept.some((other) => distance(other, spot) < SPOTS_APART_PX)) kept.push(spot);
  }
  return kept;
}

function neighborhoodMax(data: Float32Array, i: number, width: number): number {
  let most = 0;
  for (const offset of [-width - 1, -width, -width + 1, -1, 1, width - 1, width, width + 1]) {
    most = Math.max(most, data[i + offset]!);
  }
  return most;
}

function bestCircle(
  logLight: Raster,
  spot: { row: number; column: number },
  near: { row: number; column: number } | null,
  trayLight: number,
): BallCandidate | null {
  const mostRadius = RADIUS_RANGE.mostShare * Math.min(logLight.width, logLight.height);
  let best: BallCandidate | null = null;
  for (let radiusPx: number = RADIUS_RANGE.leastPx; radiusPx < mostRadius; radiusPx *= RADIUS_STEP) {
    const reach = HIGHLIGHT_REACH * radiusPx;
    const pitch = Math.max(1, radiusPx / 8);
    for (let dy = -reach; dy <= reach; dy += pitch) {
      for (let dx = -reach; dx <= reach; dx += pitch) {
        if (dy * dy + dx * dx > reach * reach) continue;
        const circle = { row: spot.row + dy, column: spot.column + dx, radiusPx };
        if (near && distance(near, circle) > radiusPx) continue;
        const score = edgeScore(logLight, circle, trayLight, best?.score ?? 0);
        if (score > (best?.score ?? 0)) best = { ...circle, score };
      }
    }
  }
  return best && insideIsDark(logLight, best) ? best : null;
}

/** Every so many-th direction comes first, so that a poor circle is given up early. */
const LEAP = 13;
const DIRECTIONS = Array.from({ length: ANGLES }, (_, i) => {
  const angle = (2 * Math.PI * ((i * LEAP) % ANGLES)) / ANGLES;
  return [Math.sin(angle), Math.cos(angle)] as const;
});
// Apart, since taking pairs apart costs more than what is done with them.
const DOWN = Float64Array.from(DIRECTIONS, ([down]) => down);
const RIGHT = Float64Array.from(DIRECTIONS, ([, right]) => right);

/**
 * Mean step from inside to outside over the circle, each step cut off at a full edge; stops early below `beat`.
 *
 * The glass mirrors the horizon as a dark ring inside its rim. A circle on that ring has steps as clear as the rim's,
 * but what lies outside of it is darker than any tray.
 */
function edgeScore(logLight: Raster, circle: Circle, trayLight: number, beat: number): number {
  const { row, column, radiusPx } = circle;
  const margin = Math.max(1.2, 0.1 * radiusPx);
  const far = radiusPx + margin;
  const near = radiusPx - margin;
  const { width, height, data } = logLight;
  const isWhole = row > far && column > far && row + far < height - 1 && column + far < width - 1;
  let sum = 0;
  for (let i = 0; i < ANGLES; i++) {
    const down = DOWN[i]!;
    const right = RIGHT[i]!;
    const outside = isWhole
      ? between(data, width, row + far * down, column + far * right)
      : samplePixel(logLight, row + far * down, column + far * right);
    const inside = isWhole
      ? between(data, width, row + near * down, column + near * right)
      : samplePixel(logLight, row + near * down, column + near * right);
    const step = outside - inside;
    const belief = outside < trayLight ? Math.exp(outside - trayLight) : 1;
    sum += belief * Math.min(1, Math.max(-0.5, step / FULL_STEP));
    if (sum + (ANGLES - 1 - i) < beat * ANGLES) return 0;
  }
  return sum / ANGLES;
}

/** As `samplePixel` away from the picture's edge, once more here: most of a ball's search is this, and asking for the edge half of it. */
function between(data: Float32Array, width: number, y: number, x: number): number {
  const top = Math.floor(y);
  const left = Math.floor(x);
  const down = y - top;
  const across = x - left;
  const i = top * width + left;
  const upper = data[i]! * (1 - across) + data[i + 1]! * across;
  const lower = data[i + width]! * (1 - across) + data[i + width + 1]! * across;
  return upper * (1 - down) + lower * down;
}

/** The ball is dark glass: most of its face is darker than what lies around it. */
function insideIsDark(logLight: Raster, circle: Circle): boolean {
  const ring = (share: number) =>
    DIRECTIONS.map(([down, right]) =>
      samplePixel(
        logLight,
        circle.row + share * circle.radiusPx * down,
        circle.column + share * circle.radiusPx * right,
      ),
    );
  const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1]!;
  const inside = median([...ring(0.15), ...ring(0.35), ...ring(0.55), ...ring(0.75)]);
  return inside < median(ring(1.2)) - FULL_STEP;
}
