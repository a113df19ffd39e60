import type { Mask, Raster } from '../../src/image/raster';
import golden from '../golden/opencv.json';

/** Reference pictures and values of Debian's OpenCV; made by tests/golden/opencv.py. */
export { golden };

export const GRAY = rasterOf(golden.gray);
export const COLOR = rasterOf(golden.color);
export const MASK: Mask = { ...golden.mask, data: Uint8Array.from(golden.mask.data) };

function rasterOf(listed: { width: number; height: number; channels: number; data: number[] }): Raster {
  return { ...listed, channels: listed.channels === 3 ? 3 : 1, data: Float32Array.from(listed.data) };
}
