import type { Mask, Raster } from '../image/raster';
import { solidity } from '../measure/solidity';
import { distanceToEdge } from '../vision/distanceToEdge';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import { watershed } from '../vision/watershed';

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
  const cores = separateCores(cv, depth);
  if (cores.length < 2) return [mask];
  const markers = new Int32Array(mask.data.length);
  cores.forEach((core, k) => {
    for (const i of core) markers[i] = k + 1;
  });
  const relief: Raster = { ...depth, data: depth.data.map((value) => -value) };
  const labels = watershed(relief, markers, mask);
  return cores.flatMap((_, k) =>
    splitTouching(cv, { ...mask, data: Uint8Array.from(labels, (label) => (label === k + 1 ? 1 : 0)) }),
  );
}

/** Pixels of each core that erosion leaves apart from the others, at the first level that breaks a neck. */
function separateCores(cv: OpenCv, depth: Raster): number[][] {
  const deepest = depth.data.reduce((most, value) => Math.max(most, value), 0);
  for (let level = 1; level < LEVELS; level++) {
    const limit = (deepest * level) / LEVELS;
    const pieces = piecesAbove(cv, depth, limit).filter((piece) => {
      const widest = piece.reduce((most, i) => Math.max(most, depth.data[i]!), 0);
      return widest >= LEAST_PIECE * deepest && limit <= NECK_SHARE * widest;
    });
    if (pieces.length > 1) return pieces;
  }
  return [];
}

function piecesAbove(cv: OpenCv, depth: Raster, limit: number): number[][] {
  const data = Uint8Array.from(depth.data, (value) => (value > limit ? 1 : 0));
  const { labels, components } = labelComponents(cv, { width: depth.width, height: depth.height, data });
  const pieces: number[][] = components.map(() => []);
  labels.forEach((label, i) => {
    if (label > 0) pieces[label - 1]!.push(i);
  });
  return pieces;
}
