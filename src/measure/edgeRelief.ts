import type { Raster } from '../image/raster';
import type { TrayDifference } from './trayDifference';

/** Color edges count this many times as much as edges of light: shadows and grain make few of them. */
const COLOR_WEIGHT = 3;

/**
 * Strength of edges in light and color: low on even surfaces and in soft shadows, high along outlines.
 *
 * @param difference - Departures from the tray.
 * @param colorWeight - How much edges of color count beside those of light; 0 leaves them out.
 * @returns One channel, ln units per pixel, ≥ 0.
 */
export function edgeRelief(difference: TrayDifference, colorWeight = COLOR_WEIGHT): Raster {
  const { width, height, lightness, redGreen, blueGreen } = difference;
  const data = new Float32Array(width * height);
  const lastRow = width * (height - 1);
  for (let i = 0; i < data.length; i++) {
    const x = i % width;
    const across = [x < width - 1 ? i + 1 : i, x > 0 ? i - 1 : i] as const;
    const down = [i < lastRow ? i + width : i, i >= width ? i - width : i] as const;
    const squared = (field: Float32Array) =>
      (field[across[0]]! - field[across[1]]!) ** 2 + (field[down[0]]! - field[down[1]]!) ** 2;
    const color = colorWeight ** 2 * (squared(redGreen) + squared(blueGreen));
    data[i] = Math.sqrt(squared(lightness) + color) / 2;
  }
  return { width, height, channels: 1, data };
}
