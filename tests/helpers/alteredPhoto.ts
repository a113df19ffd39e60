import type { Photo } from '../../src/image/photo';
import { SRGB_8BIT_TO_LINEAR, srgbFromLinear } from '../../src/optics/srgbTransfer';

const decode = (level: number) => SRGB_8BIT_TO_LINEAR[level]!;
const encode = (light: number) => Math.round(255 * srgbFromLinear(Math.min(1, Math.max(0, light))));

/** The photo as another exposure would have recorded it: light times a factor, cut off at the camera's limit. */
export function exposed(photo: Photo, factor: number): Photo {
  const levels = Uint8Array.from({ length: 256 }, (_, level) => encode(factor * decode(level)));
  return { ...photo, rgba: photo.rgba.map((level, i) => (i % 4 === 3 ? level : levels[level]!)) };
}

/** The photo turned upside down, as if the lamp stood on the other side of the tray. */
export function turnedAround(photo: Photo): Photo {
  const rgba = new Uint8ClampedArray(photo.rgba.length);
  for (let i = 0; i < rgba.length; i += 4)
    rgba.set(photo.rgba.subarray(rgba.length - 4 - i, rgba.length - i), i);
  return { ...photo, rgba };
}

/** The photo with a disc painted over in one color, a little uneven as a tray is. */
export function paintedOver(
  photo: Photo,
  disc: { readonly row: number; readonly column: number; readonly radiusPx: number },
  color: readonly [number, number, number],
): Photo {
  const rgba = photo.rgba.slice();
  for (let pixel = 0; pixel < rgba.length / 4; pixel++) {
    const row = Math.floor(pixel / photo.widthPx);
    const column = pixel % photo.widthPx;
    if (Math.hypot(row - disc.row, column - disc.column) > disc.radiusPx) continue;
    for (let c = 0; c < 3; c++)
      rgba[4 * pixel + c] = encode(color[c]! * (1 + 0.02 * Math.sin(12.9898 * pixel)));
  }
  return { ...photo, rgba };
}
