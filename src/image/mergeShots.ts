import { SRGB_8BIT_TO_LINEAR } from '../optics/srgbTransfer';
import type { Merging, Photo, Shot } from './photo';
import { placeIn } from './placeIn';
import type { Box, Raster } from './raster';
import { sampleCodes } from './sampleCodes';

/** Codes from which a pixel counts, fully counts, counts less and no more: noise at one end, the limit at the other. */
const TRUSTED = { after: 2, fullyFrom: 16, fullyTo: 225, before: 247 };

/** A shot and the light it let in, share of the photo at hand's. */
interface Leveled extends Omit<Shot, 'placing'> {
  readonly placing: Shot['placing'] | null;
  readonly level: number;
}

/**
 * Merges all shots of a scene inside a rectangle of the photo at hand.
 *
 * Each shot's linear light, divided by its exposure, is averaged with weights 1 / variance, taking the
 * variance of a code as equal everywhere, times a hat over the codes. The channels of a pixel share one
 * weight, so that no hue arises where only one of them is at its limit. Where no shot can be trusted, the
 * darkest of those at their limit stands alone, or the brightest when it is too dark for all.
 *
 * @param photo - The photo at hand, for its size and codes.
 * @param merging - What is merged with it.
 * @param box - Rectangle inside the photo, whole pixels.
 * @returns RGB raster in units of the photo's own limit, 0 to `clipLevel`.
 * @see Debevec & Malik 1997, eq. 6 (weighted mean over exposures, hat weights); Granados et al. 2010,
 *   "Optimal HDR reconstruction with linear digital cameras" (weights 1 / variance).
 */
export function mergeShots(photo: Photo, merging: Merging, box: Box): Raster {
  const shots = levelsOf(photo, merging);
  const data = new Float32Array(3 * box.width * box.height);
  const light = new Float64Array(3);
  for (let i = 0; i < box.width * box.height; i++) {
    const row = box.row + Math.floor(i / box.width);
    const column = box.column + (i % box.width);
    mergePixel(photo, shots, merging.linear, row, column, light);
    data.set(light, 3 * i);
  }
  return { width: box.width, height: box.height, channels: 3, data, clipLevel: merging.clipLevel };
}

/** The photo at hand and the further shots, the darkest first. */
function levelsOf({ rgba }: Photo, { shots }: Merging): Leveled[] {
  const own: Leveled = { rgba, exposure: [1, 1, 1], placing: null, level: 1 };
  const others = shots.map((shot) => {
    const [red, green, blue] = shot.exposure;
    return { ...shot, level: (red + green + blue) / 3 };
  });
  return [own, ...others].sort((a, b) => a.level - b.level);
}

const codes = new Float64Array(3);

function mergePixel(
  photo: Photo,
  shots: readonly Leveled[],
  linear: Float32Array,
  row: number,
  column: number,
  into: Float64Array,
): void {
  let total = 0;
  let isDecided = false;
  into.fill(0);
  for (const { rgba, exposure, placing, level } of shots) {
    const [r, c] = placing ? placeIn(placing, photo, row, column) : [row, column];
    sampleCodes(rgba, photo, r, c, codes);
    const most = Math.round(Math.max(codes[0]!, codes[1]!, codes[2]!));
    const weight = level * level * TRUST[most]!;
    if (total === 0 && weight === 0 && !isDecided) {
      // Nothing to trust so far: the darkest at its limit is kept, and one that is too dark until a brighter comes.
      for (let k = 0; k < 3; k++) into[k] = lightOf(linear, codes[k]!) / exposure[k]!;
      isDecided = most >= TRUSTED.before;
    } else if (weight > 0) {
      const before = total / (total + weight);
      for (let k = 0; k < 3; k++) {
        into[k] = before * into[k]! + ((1 - before) * lightOf(linear, codes[k]!)) / exposure[k]!;
      }
      total += weight;
    }
  }
}

/** Linear light of a code that may lie between two. */
function lightOf(linear: Float32Array, code: number): number {
  const below = Math.min(254, Math.floor(code));
  return linear[below]! + (code - below) * (linear[below + 1]! - linear[below]!);
}

/** Trust in a pixel by its largest code: 1 / variance of its linear light times the hat. */
const TRUST = Float64Array.from({ length: 256 }, (_, code) => {
  const { after, fullyFrom, fullyTo, before } = TRUSTED;
  const slope = SRGB_8BIT_TO_LINEAR[Math.min(255, code + 1)]! - SRGB_8BIT_TO_LINEAR[Math.max(0, code - 1)]!;
  const hat = Math.min(1, (code - after) / (fullyFrom - after), (before - code) / (before - fullyTo));
  return Math.max(0, hat) / (slope * slope);
});
