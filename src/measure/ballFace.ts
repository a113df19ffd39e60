import { luminance } from '../image/luminance';
import type { Raster } from '../image/raster';
import type { Circle } from './circleFit';

/** What the ball mirrors beyond an even room: light in excess of the usual at that distance from its center. */
export interface BallFace {
  readonly width: number;
  readonly height: number;
  /** Luminance less that of the room, unit of the raster; NaN outside the face. */
  readonly excess: Float32Array;
  /** Luminance of the mirrored room at a distance from the center, shares of the radius. */
  readonly room: (share: number) => number;
  /** Place of the brightest 3 × 3 pixels: on the lamp's image. */
  readonly brightest: { readonly row: number; readonly column: number };
  /** Excess there. */
  readonly peak: number;
}

/** Farther out the ball mirrors the tray and the stones on it, never a lamp: cos 45°, less the camera's blur. */
export const FACE_SHARE = 0.67;
const RINGS = 20;

/**
 * The part of the ball that mirrors what stands above the tray, the even room taken out.
 *
 * The room is the median over each ring around the center: lamps cover less than half of any ring.
 *
 * @param crop - RGB raster around the ball in linear light.
 * @param ball - The ball's circle in the crop.
 * @returns The excess of light on the face; null when the ball has fewer than 60 pixels in the crop.
 */
export function ballFace(crop: Raster, ball: Circle): BallFace | null {
  const light = luminance(crop);
  const { width, height } = light;
  const shares = new Float32Array(light.data.length);
  const rings: number[][] = Array.from({ length: RINGS }, () => []);
  for (let row = 0, i = 0; row < height; row++) {
    for (let column = 0; column < width; column++, i++) {
      const share = Math.hypot(row - ball.row, column - ball.column) / ball.radiusPx;
      shares[i] = share;
      if (share < FACE_SHARE) rings[Math.floor((share / FACE_SHARE) * RINGS)]!.push(light.data[i]!);
    }
  }
  if (rings.reduce((sum, ring) => sum + ring.length, 0) < 60) return null;
  const room = ringProfile(rings);
  const excess = light.data.map((value, i) => {
    const share = shares[i]!;
    return share < FACE_SHARE ? value - room(share) : Number.NaN;
  });
  return { width, height, excess, room, ...brightestOf(excess, width) };
}

/** Medians of the rings, the innermost taken together, with straight lines in between. */
function ringProfile(rings: readonly number[][]): (share: number) => number {
  const medians = rings.map((_, k) => {
    const near = (k < 5 ? rings.slice(0, 6).flat() : rings[k]!).sort((a, b) => a - b);
    return near[near.length >> 1] ?? 0;
  });
  return (share) => {
    const at = Math.min(RINGS - 1, Math.max(0, (share / FACE_SHARE) * RINGS - 0.5));
    const low = Math.floor(at);
    const high = Math.min(RINGS - 1, low + 1);
    return medians[low]! + (at - low) * (medians[high]! - medians[low]!);
  };
}

function brightestOf(excess: Float32Array, width: number): Pick<BallFace, 'brightest' | 'peak'> {
  let peak = Number.NEGATIVE_INFINITY;
  let at = 0;
  for (let i = width + 1; i < excess.length - width - 1; i++) {
    let sum = 0;
    for (const down of [-width, 0, width])
      sum += excess[i + down - 1]! + excess[i + down]! + excess[i + down + 1]!;
    if (sum / 9 > peak) {
      peak = sum / 9;
      at = i;
    }
  }
  return { peak, brightest: { row: Math.floor(at / width), column: at % width } };
}
