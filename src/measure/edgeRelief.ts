import type { Raster } from '../image/raster';
import type { TrayDifference } from './trayModel';

/**
 * Strength of edges in light and color: low on even surfaces and in soft shadows, high along outlines.
 *
 * @param difference - Departures from the tray.
 * @returns One channel, ln units per pixel, ≥ 0.
 */
export function edgeRelief(difference: TrayDifference): Raster {
  const { width, height, lightness, chroma } = difference;
  const data = new Float32Array(width * height);
  const lastRow = width * (height - 1);
  for (let i = 0; i < data.length; i++) {
    const x = i % width;
    const left = x > 0 ? i - 1 : i;
    const right = x < width - 1 ? i + 1 : i;
    const above = i >= width ? i - width : i;
    const below = i < lastRow ? i + width : i;
    const light = Math.hypot(lightness[right]! - lightness[left]!, lightness[below]! - lightness[above]!);
    const color = Math.hypot(chroma[right]! - chroma[left]!, chroma[below]! - chroma[above]!);
    data[i] = Math.hypot(light, color) / 2;
  }
  return { width, height, channels: 1, data };
}
