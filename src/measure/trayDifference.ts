import type { Raster } from '../image/raster';
import { surfaceAt, type TrayModel } from './trayModel';

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
  const [ofLight, ofRed, ofBlue] = tray.surfaces;
  const [floorRed, floorGreen, floorBlue] = tray.floor;
  for (let row = 0, i = 0; row < height; row++) {
    const y = row / height - 0.5;
    for (let column = 0; column < width; column++, i++) {
      const x = column / width - 0.5;
      const green = Math.log(data[3 * i + 1]! + floorGreen);
      light[i] = data[3 * i + 1]!;
      lightness[i] = green - surfaceAt(ofLight, x, y);
      redGreen[i] = Math.log(data[3 * i]! + floorRed) - green - surfaceAt(ofRed, x, y);
      blueGreen[i] = Math.log(data[3 * i + 2]! + floorBlue) - green - surfaceAt(ofBlue, x, y);
    }
  }
  const { lightnessSd, chromaSd } = tray;
  return { width, height, light, lightness, redGreen, blueGreen, lightnessSd, chromaSd };
}
