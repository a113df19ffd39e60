import { luminance } from '../image/luminance';
import type { Raster } from '../image/raster';

/** How steeply the logarithm of light rises, downward and to the right; NaN where light cannot be trusted. */
export interface LightSlopes {
  readonly width: number;
  readonly height: number;
  readonly down: Float32Array;
  readonly right: Float32Array;
}

/** Light that is neither noise nor near the camera's limit, in a channel's share of the limit. */
const SOUND = { from: 0.004, to: 0.85 };
/** Steeper rises are taken for this: one glint must not outweigh the stones. */
const MOST = 0.4;

/**
 * Slopes of ln light, which a change of exposure leaves as they are.
 *
 * @param picture - RGB raster in linear light.
 */
export function lightSlopes(picture: Raster): LightSlopes {
  const { width, height, data } = picture;
  const log = luminance(picture).data;
  for (let i = 0; i < log.length; i++) {
    const most = Math.max(data[3 * i]!, data[3 * i + 1]!, data[3 * i + 2]!);
    log[i] = log[i]! >= SOUND.from && most <= SOUND.to ? Math.log(log[i]!) : Number.NaN;
  }
  const down = new Float32Array(width * height).fill(Number.NaN);
  const right = new Float32Array(width * height).fill(Number.NaN);
  const bounded = (slope: number) => Math.max(-MOST, Math.min(MOST, slope));
  for (let row = 1; row < height - 1; row++) {
    for (let i = row * width + 1; i < row * width + width - 1; i++) {
      down[i] = bounded((log[i + width]! - log[i - width]!) / 2);
      right[i] = bounded((log[i + 1]! - log[i - 1]!) / 2);
    }
  }
  return { width, height, down, right };
}
