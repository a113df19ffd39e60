import { boxOfPlaces } from '../image/boxOfPlaces';
import { cropReduced } from '../image/cropReduced';
import { fillPolygon } from '../image/fillPolygon';
import type { Photo } from '../image/photo';
import type { Mask, Raster } from '../image/raster';
import type { PixelPoint } from './report';

/** A stone cut out of the photo at the resolution it is measured at. */
export interface StoneCrop {
  /** RGB in linear light, the lamp's color divided out. */
  readonly stone: Raster;
  readonly mask: Mask;
  /** Photo pixels per crop pixel. */
  readonly factor: number;
  /** Photo row and column of a place in the crop. */
  readonly toPhoto: (row: number, column: number) => PixelPoint;
}

/** Pixels per millimeter that carry all that is read: a crop has up to twice as many, unless the photo is coarser. */
export const ENOUGH_PX_PER_MM = { gloss: 16, look: 8, water: 8 };

/** Tray kept around the stone, photo pixels. */
const MARGIN_PX = 2;

/**
 * Cuts one stone out of the photo.
 *
 * @param outline - The stone's, photo pixels.
 * @param mmPerPx - The photo's scale.
 * @param lampColor - Divided out.
 * @param enoughPxPerMm - The crop has at least so many pixels per millimeter where the photo has, and up to twice as many.
 */
export function stoneCrop(
  photo: Photo,
  outline: readonly PixelPoint[],
  mmPerPx: number,
  lampColor: readonly [number, number, number],
  enoughPxPerMm = ENOUGH_PX_PER_MM.gloss,
): StoneCrop {
  const factor = Math.max(1, Math.floor(1 / mmPerPx / enoughPxPerMm));
  const box = boxOfPlaces(outline, MARGIN_PX, photo);
  const stone = cropReduced(photo, box, factor);
  const [red, green, blue] = lampColor;
  for (let i = 0; i < stone.data.length; i += 3) {
    stone.data[i]! /= red;
    stone.data[i + 1]! /= green;
    stone.data[i + 2]! /= blue;
  }
  const inCrop = outline.map(
    ([row, column]): PixelPoint => [
      (row - box.row + 0.5) / factor - 0.5,
      (column - box.column + 0.5) / factor - 0.5,
    ],
  );
  return {
    stone,
    mask: fillPolygon(inCrop, stone.width, stone.height),
    factor,
    toPhoto: (row, column) => [
      box.row + (row + 0.5) * factor - 0.5,
      box.column + (column + 0.5) * factor - 0.5,
    ],
  };
}
