import type { Photo } from '../../src/image/photo';
import type { Raster } from '../../src/image/raster';
import { srgbFromLinear } from '../../src/optics/srgbTransfer';

/** A camera as the tests need one. */
export interface DrawnCamera {
  /** Recorded value of an sRGB value, 0 to 1; nothing when left out. */
  readonly curve?: (v: number) => number;
  /** Standard deviation of the noise, codes. */
  readonly noise?: () => number;
  /** EXIF data would say so. */
  readonly exposure?: number;
}

/** An S-shaped contrast curve: that share of a smoothstep, the rest left as it is. */
export const sCurve = (share: number) => (v: number) => (1 - share) * v + share * v * v * (3 - 2 * v);

/** Photographs a picture in linear light: times the gain, clipped, and rounded to 8-bit codes. */
export function shoot(scene: Raster, gain: number, { curve, noise, exposure }: DrawnCamera = {}): Photo {
  const rgba = new Uint8ClampedArray(4 * scene.width * scene.height).fill(255);
  for (let i = 0, to = 0; i < scene.data.length; i += 3, to += 4) {
    for (let c = 0; c < 3; c++) {
      const v = srgbFromLinear(Math.min(1, gain * scene.data[i + c]!));
      rgba[to + c] = Math.round(255 * (curve ? curve(v) : v) + (noise ? noise() : 0));
    }
  }
  return { widthPx: scene.width, heightPx: scene.height, rgba, exposure: exposure ?? null };
}
