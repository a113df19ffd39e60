import { maskWhere } from '../image/maskWhere';
import type { Mask, Raster } from '../image/raster';
import { solidity } from '../measure/solidity';
import { distanceToEdge } from '../vision/distanceToEdge';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import { watershed } from '../vision/watershed';
import { type BoxedMask, boxesOf, cutOut } from './regrowStones';

/** Two stones meet in a neck at most this wide, share of the smaller stone's own half-width. */
const NECK_SHARE = 0.72;
/** A piece as near to its convex hull as this is one stone. */
const SOLID = 0.96;
/** Levels of erosion tried between the edge and the innermost point. */
const LEVELS = 24;
/** A piece must be at least this wide at its widest, share of the widest piece's half-width. */
const LEAST_PIECE = 0.3;

/**
 * Separates stones that touch: erosion breaks a narrow neck before it uses up the stones on both sides.
 *
 * The narrowest necks are cut first, then the parts are looked at again, so that a chain of stones falls apart
 * though its necks differ.
 *
 * @param cv - OpenCV.
 * @param mask - One connected piece.
 * @returns The mask itself, or one mask per stone, together covering it.
 */
export function splitTouching(cv: OpenCv, mask: Mask): Mask[] {
  if (solidity(mask) > SOLID) return [mask];
  const depth = distanceToEdge(cv, mask);
  const { markers, count } = separateCores(cv, depth);
  if (count < 2) return [mask];
  const relief: Raster = { ...depth, data: depth.data.map((value) => -value) };
  const labels = watershed(relief, markers, mask);
  const boxes = boxesOf(labels, count + 1, mask.width, mask.height);
  return boxes
    .slice(1)
    .flatMap((box, k) => (box ? partsOf(cv, cutOut(labels, k + 1, mask.width, box), mask) : []));
}

/** One stone's part of a piece, split on; looked at in its own box, given back in the piece's. */
function partsOf(cv: OpenCv, { box, mask }: BoxedMask, { width, height }: Mask): Mask[] {
  return splitTouching(cv, mask).map((part) => {
    const data = new Uint8Array(width * height);
    for (let y = 0; y < box.height; y++) {
      const row = part.data.subarray(y * box.width, (y + 1) * box.width);
      data.set(row, (box.row + y) * width + box.column);
    }
    return { width, height, data };
  });
}

/** Numbers from 1 for the cores that erosion leaves apart, at the first level that breaks a neck; none when none does. */
function separateCores(cv: OpenCv, depth: Raster): { markers: Int32Array; count: number } {
  const { width, height } = depth;
  const deepest = depth.data.reduce((most, value) => Math.max(most, value), 0);
  for (let level = 1; level < LEVELS; level++) {
    const limit = (deepest * level) / LEVELS;
    if (limit > NECK_SHARE * deepest) break;
    const above = maskWhere(width, height, (i) => depth.data[i]! > limit);
    const { labels, components } = labelComponents(cv, above);
    if (components.length < 2) continue;
    const widest = new Float32Array(components.length + 1);
    for (let i = 0; i < labels.length; i++) {
      const label = labels[i]!;
      if (label > 0 && depth.data[i]! > widest[label]!) widest[label] = depth.data[i]!;
    }
    let count = 0;
    const numbers = widest.map((most) => {
      const isCore = most > 0 && most >= LEAST_PIECE * deepest && limit <= NECK_SHARE * most;
      return isCore ? ++count : 0;
    });
    if (count > 1) return { markers: labels.map((label) => numbers[label]!), count };
  }
  return { markers: new Int32Array(0), count: 0 };
}
