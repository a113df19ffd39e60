import { maskWhere } from '../image/maskWhere';
import type { Mask } from '../image/raster';
import { openMask } from '../kernels/openMask';
import { solidity } from '../measure/solidity';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import { TRAY } from './markStones';
import { type BoxedMask, cutOut } from './regrowStones';
import { splitTouching } from './splitTouching';

/** Stones are nearly convex; what is left of one stone whose gray middle looks like tray is a crescent. */
const LEAST_SOLIDITY = 0.8;
/** Share of the piece that its stones take at least. */
const LEAST_SHARE = 0.35;
/** Radius of the opening that parts the stones, pixels. */
const OPENING_PX = 3;

/**
 * Takes lit tray out of pieces that reached over it from one stone to the next.
 *
 * Where a piece, less all that looks like plain tray, falls into several solid parts, these are the stones and the
 * rest between them is marked as tray. A single gray stone does not: its parts are no solid ones.
 *
 * @param cv - OpenCV.
 * @param pieces - Pieces of the first flood.
 * @param area - Everything that is clearly not plain lit tray.
 * @param leastPx - Smallest stone, pixels.
 * @param markers - Markers of the picture; tray is added.
 * @returns The pieces, those that reached over tray replaced by their stones.
 */
export function clearGaps(
  cv: OpenCv,
  pieces: readonly BoxedMask[],
  area: Mask,
  leastPx: number,
  markers: Int32Array,
): BoxedMask[] {
  return pieces.flatMap((piece) => {
    const { box, mask } = piece;
    const pixel = (i: number) =>
      (box.row + Math.floor(i / box.width)) * area.width + box.column + (i % box.width);
    const inArea = maskWhere(box.width, box.height, (i) => mask.data[i] === 1 && area.data[pixel(i)] === 1);
    const { labels, components } = labelComponents(cv, openMask(inArea, OPENING_PX));
    const stones = components
      .filter((component) => component.areaPx >= leastPx)
      .map((component) => cutOut(labels, component.label, box.width, component.box))
      .flatMap((part) => splitTouching(cv, part.mask).map((stone) => ({ box: part.box, mask: stone })))
      .filter((stone) => solidity(stone.mask) > LEAST_SOLIDITY);
    const covered = stones.reduce((sum, stone) => sum + count(stone.mask), 0);
    if (stones.length < 2 || covered < LEAST_SHARE * count(mask)) return [piece];
    mask.data.forEach((inside, i) => {
      if (inside && area.data[pixel(i)] === 0 && markers[pixel(i)] === 0) markers[pixel(i)] = TRAY;
    });
    return stones.map((stone) => ({
      box: { ...stone.box, row: stone.box.row + box.row, column: stone.box.column + box.column },
      mask: stone.mask,
    }));
  });
}

const count = (mask: Mask) => mask.data.reduce((sum, inside) => sum + inside, 0);
