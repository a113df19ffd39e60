import type { Mask, Raster } from '../image/raster';

/** Where the shadows of a tray fall. */
export interface ShadowCast {
  /** Direction in the picture in which they fall, radians from right toward up, −π to π. */
  readonly turnRad: number;
  /** How far they reach past the stones, in radii of the mean stone. */
  readonly reach: number;
  /** Correlation of the shadows so drawn with the dark places seen, −1 to 1. */
  readonly likeness: number;
}

/** Directions and reaches, in radii of the mean stone, that are tried before the best is refined. */
const DIRECTIONS = 16;
const REACHES = [0.25, 0.5, 0.9];
/** So many pixels for the radius of a stone are enough: the directions of many edges are averaged. */
const ENOUGH_RADIUS_PX = 12;
/** Dark places farther from every stone than this are no shadow of one, in radii of the mean stone. */
const FARTHEST = 1.5;

/**
 * Direction and reach of the shadows that stones throw on a tray.
 *
 * A shadow is drawn as the stone's silhouette drawn out along the light; the direction and reach at which the
 * shadows so drawn agree best with the dark places beside the stones are the answer.
 *
 * @param darkness - One channel: how dark the tray is, 0 lit to 1 in full shadow.
 * @param stones - The stones, in the same picture; their own pixels tell nothing.
 * @param stoneCount - How many stones those are, ≥ 1.
 * @returns The best cast, or null when no shadow stands out.
 */
export function shadowCast(darkness: Raster, stones: Mask, stoneCount: number): ShadowCast | null {
  const area = stones.data.reduce((sum, inside) => sum + inside, 0);
  const radiusPx = Math.sqrt(area / Math.max(1, stoneCount) / Math.PI);
  const step = Math.max(1, Math.round(radiusPx / ENOUGH_RADIUS_PX));
  const cast = fittedCast(everyNth(darkness, step), everyNth(stones, step), radiusPx / step);
  return cast && { ...cast, turnRad: Math.atan2(Math.sin(cast.turnRad), Math.cos(cast.turnRad)) };
}

/** Every so many pixels of every so many rows. */
function everyNth<T extends { width: number; height: number; data: Float32Array | Uint8Array }>(
  picture: T,
  step: number,
): T {
  const width = Math.floor(picture.width / step);
  const height = Math.floor(picture.height / step);
  const data = picture.data.slice(0, width * height);
  for (let i = 0; i < data.length; i++)
    data[i] = picture.data[step * (Math.floor(i / width) * picture.width + (i % width))]!;
  return { ...picture, width, height, data };
}

function fittedCast(darkness: Raster, stones: Mask, radiusPx: number): ShadowCast | null {
  const near = placesNear(stones, Math.ceil(FARTHEST * radiusPx));
  if (near.length === 0) return null;
  const likeness = (turnRad: number, reach: number) =>
    correlation(darkness, stones, near, turnRad, reach * radiusPx);
  let best = { turnRad: 0, reach: 0, likeness: 0 };
  const attempt = (turnRad: number, reach: number) => {
    const found = likeness(turnRad, reach);
    if (found > best.likeness) best = { turnRad, reach, likeness: found };
  };
  for (let k = 0; k < DIRECTIONS; k++)
    for (const reach of REACHES) attempt((2 * Math.PI * k) / DIRECTIONS, reach);
  for (let turn = Math.PI / DIRECTIONS, factor = 1.3; turn > 0.01; turn /= 2, factor = Math.sqrt(factor)) {
    const { turnRad, reach } = best;
    for (const side of [-1, 1]) {
      attempt(turnRad + side * turn, reach);
      attempt(turnRad, reach * factor ** side);
    }
  }
  return best.likeness > 0 ? best : null;
}

/** Pixels that are no stone but have one within a reach. */
function placesNear({ width, height, data }: Mask, reachPx: number): Int32Array {
  const along = spread(data, width, height, reachPx, 1, width);
  const both = spread(along, height, width, reachPx, width, 1);
  const places: number[] = [];
  for (let i = 0; i < data.length; i++) if (both[i] && !data[i]) places.push(i);
  return Int32Array.from(places);
}

/** Spreads a mask by a reach to both sides along its lines. */
function spread(
  from: Uint8Array,
  length: number,
  lines: number,
  reachPx: number,
  step: number,
  next: number,
) {
  const into = new Uint8Array(from.length);
  for (let line = 0; line < lines; line++) {
    let last = -Infinity;
    for (let k = 0; k < length; k++) {
      if (from[line * next + k * step]) last = k;
      if (k - last <= reachPx) into[line * next + k * step] = 1;
    }
    last = Infinity;
    for (let k = length - 1; k >= 0; k--) {
      if (from[line * next + k * step]) last = k;
      if (last - k <= reachPx) into[line * next + k * step] = 1;
    }
  }
  return into;
}

/** Correlation, over the places near stones, of the darkness with shadows drawn one way. */
function correlation(
  { width, height, data }: Raster,
  stones: Mask,
  near: Int32Array,
  turnRad: number,
  reachPx: number,
): number {
  const steps = Math.max(2, Math.ceil(reachPx / 2));
  const [down, right] = [-Math.sin(turnRad), Math.cos(turnRad)];
  let [count, dark, darkSquare, drawn, both] = [0, 0, 0, 0, 0];
  for (const i of near) {
    const row = Math.floor(i / width);
    const column = i % width;
    let shaded = 0;
    for (let k = 1; k <= steps && shaded === 0; k++) {
      const y = Math.round(row - (k / steps) * reachPx * down);
      const x = Math.round(column - (k / steps) * reachPx * right);
      if (x >= 0 && y >= 0 && x < width && y < height) shaded = stones.data[y * width + x]!;
    }
    const value = data[i]!;
    count++;
    dark += value;
    darkSquare += value * value;
    drawn += shaded;
    both += shaded * value;
  }
  const covariance = both / count - (dark / count) * (drawn / count);
  const darkVariance = darkSquare / count - (dark / count) ** 2;
  const drawnVariance = (drawn / count) * (1 - drawn / count);
  return darkVariance > 0 && drawnVariance > 0 ? covariance / Math.sqrt(darkVariance * drawnVariance) : 0;
}
