import { cropReduced } from '../image/cropReduced';
import { fillPolygon } from '../image/fillPolygon';
import type { Photo } from '../image/photo';
import type { Box, Mask, Raster } from '../image/raster';
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

/** Pixels per millimeter beyond which nothing more is gained: a small pit is then ten pixels wide. */
const MOST_PX_PER_MM = 16;

/** Cuts one stone out of the photo. */
export function stoneCrop(
  photo: Photo,
  outline: readonly PixelPoint[],
  mmPerPx: number,
  lampColor: readonly [number, number, number],
): StoneCrop {
  const factor = Math.max(1, Math.floor(1 / mmPerPx / MOST_PX_PER_MM));
  const box = boxOf(outline, photo);
  const stone = cropReduced(photo, box, factor);
  for (let i = 0; i < stone.data.length; i++) stone.data[i]! /= lampColor[i % 3]!;
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

function boxOf(outline: readonly PixelPoint[], photo: Photo): Box {
  const rows = outline.map(([row]) => row);
  const columns = outline.map(([, column]) => column);
  const top = Math.max(0, Math.floor(Math.min(...rows)) - 2);
  const left = Math.max(0, Math.floor(Math.min(...columns)) - 2);
  const bottom = Math.min(photo.heightPx - 1, Math.ceil(Math.max(...rows)) + 2);
  const right = Math.min(photo.widthPx - 1, Math.ceil(Math.max(...columns)) + 2);
  return { row: top, column: left, width: right - left + 1, height: bottom - top + 1 };
}
