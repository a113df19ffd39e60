import type { Raster } from '../image/raster';
import { lnInPlace } from '../kernels/lnInPlace';
import { surfaceRow, type TrayModel } from './trayModel';

/** How each pixel differs from the bare tray that the model expects there. */
export interface TrayDifference {
  readonly width: number;
  readonly height: number;
  /** Linear green light, 0 to 1. */
  readonly light: Float32Array;
  /** ln(light / tray's light). */
  readonly lightness: Float32Array;
  /** ln(R/G) and ln(B/G) less the tray's. */
  readonly redGreen: Float32Array;
  readonly blueGreen: Float32Array;
  /** The tray's own spread, see `TrayModel`. */
  readonly lightnessSd: number;
  readonly chromaSd: number;
}

/**
 * Departure of every pixel from the bare tray, in logarithms, so that exposure and white balance fall out.
 *
 * @param picture - RGB raster in linear light.
 * @param tray - Model of the same picture, or of one blurred otherwise.
 * @returns ln units; 0 where the pixel is as the tray should be.
 */
export function trayDifference(picture: Raster, tray: TrayModel): TrayDifference {
  const { width, height, data } = picture;
  const count = width * height;
  const lightness = new Float32Array(count);
  const redGreen = new Float32Array(count);
  const blueGreen = new Float32Array(count);
  const light = new Float32Array(count);
  const [floorRed, floorGreen, floorBlue] = tray.floor;
  for (let i = 0, j = 0; i < count; i++, j += 3) {
    light[i] = data[j + 1]!;
    lightness[i] = data[j + 1]! + floorGreen;
    redGreen[i] = data[j]! + floorRed;
    blueGreen[i] = data[j + 2]! + floorBlue;
  }
  for (const field of [lightness, redGreen, blueGreen]) lnInPlace(field);
  const [ofLight, ofRed, ofBlue] = tray.surfaces;
  const [expectedLight, expectedRed, expectedBlue] = [ofLight, ofRed, ofBlue].map(
    () => new Float64Array(width),
  ) as [Float64Array, Float64Array, Float64Array];
  for (let row = 0, i = 0; row < height; row++) {
    const y = row / height - 0.5;
    surfaceRow(ofLight, y, expectedLight);
    surfaceRow(ofRed, y, expectedRed);
    surfaceRow(ofBlue, y, expectedBlue);
    for (let column = 0; column < width; column++, i++) {
      const green = lightness[i]!;
      lightness[i] = green - expectedLight[column]!;
      redGreen[i] = redGreen[i]! - green - expectedRed[column]!;
      blueGreen[i] = blueGreen[i]! - green - expectedBlue[column]!;
    }
  }
  const { lightnessSd, chromaSd } = tray;
  return { width, height, light, lightness, redGreen, blueGreen, lightnessSd, chromaSd };
}
