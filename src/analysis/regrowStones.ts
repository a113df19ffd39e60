import { maskWhere } from '../image/maskWhere';
import type { Box, Mask, Raster } from '../image/raster';
import { openMask } from '../kernels/openMask';
import { cheapestMarker } from '../vision/cheapestMarker';
import { distanceToEdge } from '../vision/distanceToEdge';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import { closeByDisc, openByDisc } from './discMorphology';
import { fillHoles } from './fillHoles';
import { BALL, STONE } from './markStones';

/** Number of the first stone; the next ones follow. */
const FIRST_STONE = BALL + 1;

/** Bays narrower than this share of a stone's radius are filled, and as much of its rim is left open again. */
const BAY_SHARE = 0.8;
const RIM_SHARE = 0.15;
/** Spurs narrower than this share of a stone's half-width are cut off first. */
const SPUR_SHARE = 0.3;
/** Radius of the last opening, pixels. */
const SMOOTH_PX = 2;

/** A stone's mask and where in the picture it lies. */
export interface BoxedMask {
  readonly box: Box;
  /** Of the box's size. */
  readonly mask: Mask;
}

/**
 * Floods once more from the bodies of stones that were found: spurs cut off, bays filled, each with its own number.
 *
 * Parts of a stone that its own pattern cut off from the first seeds are reached from the body, and stones that
 * touch meet at the edge between them.
 *
 * @param cv - OpenCV.
 * @param found - The stones of the first flood.
 * @param markers - Markers of the first flood; its tray and ball are kept.
 * @param cost - Cost of stepping onto each pixel.
 * @returns The stones, in the same order; one that got lost is left out.
 */
export function regrowStones(
  cv: OpenCv,
  found: readonly BoxedMask[],
  markers: Int32Array,
  cost: Raster,
): BoxedMask[] {
  const { width, height } = cost;
  const seeds = markers.map((marker) => (marker === STONE ? 0 : marker));
  found.forEach((piece, k) => {
    const body = bodyOf(cv, piece);
    eachPixel(piece, width, height, (pixel) => {
      if (markers[pixel] === STONE) seeds[pixel] = FIRST_STONE + k;
    });
    eachPixel(body, width, height, (pixel) => {
      if (seeds[pixel] === 0) seeds[pixel] = FIRST_STONE + k;
    });
  });
  const labels = cheapestMarker(cost, seeds);
  const boxes = boxesOf(labels, FIRST_STONE + found.length, width, height);
  return found.flatMap((_, k) => {
    const around = boxes[FIRST_STONE + k];
    return around ? largestPiece(cv, cutOut(labels, FIRST_STONE + k, width, around)) : [];
  });
}

/** What is sure to lie on the stone if its silhouette has no bays. */
function bodyOf(cv: OpenCv, { box, mask }: BoxedMask): BoxedMask {
  const radius = Math.sqrt(mask.data.reduce((sum, inside) => sum + inside, 0) / Math.PI);
  const bay = BAY_SHARE * radius;
  const wide = widened({ box, mask }, Math.ceil(bay) + 2);
  const halfWidth = distanceToEdge(cv, mask).data.reduce((most, depth) => Math.max(most, depth), 0);
  const closed = closeByDisc(cv, openByDisc(cv, wide.mask, SPUR_SHARE * halfWidth), bay);
  const depth = distanceToEdge(cv, closed).data;
  const body = maskWhere(closed.width, closed.height, (i) => depth[i]! > RIM_SHARE * radius);
  return { box: wide.box, mask: body };
}

/** The mask with a margin of outside around it; its box may reach beyond the picture. */
export function widened({ box, mask }: BoxedMask, margin: number): BoxedMask {
  const width = box.width + 2 * margin;
  const height = box.height + 2 * margin;
  const data = new Uint8Array(width * height);
  for (let y = 0; y < box.height; y++) {
    data.set(mask.data.subarray(y * box.width, (y + 1) * box.width), (y + margin) * width + margin);
  }
  return {
    box: { row: box.row - margin, column: box.column - margin, width, height },
    mask: { width, height, data },
  };
}

function eachPixel({ box, mask }: BoxedMask, width: number, height: number, use: (pixel: number) => void) {
  mask.data.forEach((inside, i) => {
    const row = box.row + Math.floor(i / box.width);
    const column = box.column + (i % box.width);
    if (inside && row >= 0 && column >= 0 && row < height && column < width) use(row * width + column);
  });
}

function largestPiece(cv: OpenCv, whole: BoxedMask): BoxedMask[] {
  const mask = openMask(fillHoles(cv, whole.mask), SMOOTH_PX);
  const pieces = labelComponents(cv, mask);
  const [largest] = [...pieces.components].sort((a, b) => b.areaPx - a.areaPx);
  if (!largest) return [];
  const piece = cutOut(pieces.labels, largest.label, mask.width, largest.box);
  const box = {
    ...largest.box,
    row: largest.box.row + whole.box.row,
    column: largest.box.column + whole.box.column,
  };
  return [{ box, mask: piece.mask }];
}

/** The box around the pixels of each label below `count`; undefined for one without any. */
export function boxesOf(
  labels: Int32Array,
  count: number,
  width: number,
  height: number,
): (Box | undefined)[] {
  const top = new Int32Array(count).fill(height);
  const left = new Int32Array(count).fill(width);
  const bottom = new Int32Array(count).fill(-1);
  const right = new Int32Array(count).fill(-1);
  for (let row = 0, i = 0; row < height; row++) {
    for (let column = 0; column < width; column++, i++) {
      const label = labels[i]!;
      if (row < top[label]!) top[label] = row;
      if (column < left[label]!) left[label] = column;
      bottom[label] = row;
      if (column > right[label]!) right[label] = column;
    }
  }
  return Array.from({ length: count }, (_, k) =>
    bottom[k]! < 0
      ? undefined
      : {
          row: top[k]!,
          column: left[k]!,
          width: right[k]! - left[k]! + 1,
          height: bottom[k]! - top[k]! + 1,
        },
  );
}

/** The pixels of one label in a box. */
export function cutOut(labels: Int32Array, label: number, pictureWidth: number, box: Box): BoxedMask {
  const data = new Uint8Array(box.width * box.height);
  for (let y = 0, i = 0; y < box.height; y++) {
    const from = (box.row + y) * pictureWidth + box.column;
    for (let x = 0; x < box.width; x++, i++) data[i] = labels[from + x] === label ? 1 : 0;
  }
  return { box, mask: { width: box.width, height: box.height, data } };
}
