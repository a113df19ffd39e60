import type { Mask } from '../image/raster';
import { bytesAt, openKernels, placesFor } from './openKernels';

/**
 * Removes what a disc does not fit into: specks, hairs and thin bridges. What lies beyond the border never decides.
 *
 * The same as OpenCV's opening by an ellipse of equal sides, which is tested; in this build of it, without SIMD, that took
 * a fifth of the time in which stones are found.
 *
 * @param radiusPx - Radius of the disc, a whole number of pixels, ≥ 0; its side is 2 · radius + 1.
 * @throws RangeError for another radius.
 */
export function openMask(mask: Mask, radiusPx: number): Mask {
  if (!Number.isInteger(radiusPx) || radiusPx < 0) {
    throw new RangeError(`A radius of ${radiusPx} pixels is not a whole number of them, 0 or more.`);
  }
  const { width, height } = mask;
  const columns = width + 2 * radiusPx;
  const padded = columns * (height + 2 * radiusPx);
  const [disc, first, second] = placesFor(2 * radiusPx + 1, padded, padded) as [number, number, number];
  bytesAt(disc, 2 * radiusPx + 1).set(halfWidths(radiusPx));
  const given = bytesAt(first, padded).fill(1);
  const inner = radiusPx * columns + radiusPx;
  for (let row = 0; row < height; row++) {
    given.set(mask.data.subarray(row * width, (row + 1) * width), inner + row * columns);
  }
  const { extremesUnderDisc } = openKernels();
  extremesUnderDisc(first, width, height, disc, radiusPx, 1, second + inner, columns);
  clearMargin(bytesAt(second, padded), columns, width, height, radiusPx);
  extremesUnderDisc(second, width, height, disc, radiusPx, 0, first, width);
  return { width, height, data: bytesAt(first, width * height).slice() };
}

/** Half the width of each row of a disc, as OpenCV draws its ellipses. */
function halfWidths(radius: number): number[] {
  return Array.from({ length: 2 * radius + 1 }, (_, row) =>
    Math.round(Math.sqrt(radius * radius - (row - radius) ** 2)),
  );
}

/** Zeros around the inner part of a plane. */
function clearMargin(
  plane: Uint8Array,
  columns: number,
  width: number,
  height: number,
  radius: number,
): void {
  plane.fill(0, 0, radius * columns);
  for (let row = radius; row < radius + height; row++) {
    plane.fill(0, row * columns, row * columns + radius);
    plane.fill(0, row * columns + radius + width, (row + 1) * columns);
  }
  plane.fill(0, (radius + height) * columns);
}
