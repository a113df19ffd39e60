import { maskWhere } from '../image/maskWhere';
import type { Mask, Raster } from '../image/raster';
import { openMask } from '../kernels/openMask';
import type { Circle } from '../measure/circleFit';
import { grainEdge } from '../measure/edgeRelief';
import { cheapestMarker } from '../vision/cheapestMarker';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import { clearGaps } from './clearGaps';
import { fillHoles } from './fillHoles';
import { type LampSide, markStones, STONE } from './markStones';
import { type BoxedMask, cutOut, regrowStones } from './regrowStones';
import { splitTouching } from './splitTouching';

export type { LampSide } from './markStones';

/** Smallest stone when no scale is known, share of the picture's area. */
const LEAST_STONE_SHARE = 0.0004;
/** Cost of a step over even ground, in steps over an edge `EDGE_TIMES_USUAL` times as strong as the usual one. */
const STEP_COST = 0.1;
const EDGE_TIMES_USUAL = 3;
/** Share of a stone's outline that lies on a clear edge, and how clear, in times the usual strength. */
const LEAST_OUTLINE = 0.6;
const CLEAR_EDGE = 3.5;
/** A piece is nothing but shadow when this share of it looks so. */
const SHADOW_SHARE = 0.8;
/** Of a stone at least this share is clearly not tray. */
const STONE_SHARE = 0.2;

/** What runs along the ball with this share of its outline is light that the ball throws on the tray; a stone touches it in a spot. */
const MOST_ALONG_BALL = 0.25;
/** How near that is, share of the ball's radius. */
const AT_BALL = 0.12;

/** A stone's mask and where in the picture it lies. */
export interface StonePiece extends BoxedMask {
  /** The whole picture in which it was found: RGB in linear light. */
  readonly picture: Raster;
}

/**
 * Finds the stones of a tray in a small picture.
 *
 * Pixels that are surely stone and surely tray are flooded toward each other over the edges, so that soft
 * shadows fall to the tray and a stone as gray as the tray still ends at its outline.
 *
 * @param cv - OpenCV.
 * @param small - RGB raster in linear light.
 * @param ball - The reference ball in it, or null.
 * @param lampSide - Where the lamp is, or null when nothing tells.
 * @param leastStonePx - Area below which a piece is dust or grit, pixels; 0 when no scale is known.
 * @returns One piece per stone, touching stones apart.
 */
export function findStones(
  cv: OpenCv,
  small: Raster,
  ball: Circle | null,
  lampSide: LampSide | null,
  leastStonePx: number,
): StonePiece[] {
  const { width, height } = small;
  const { markers, edges, area, shaded } = markStones(cv, small, ball, lampSide);
  const grain = grainEdge(edges);
  const cost = crossingCost(edges, grain);
  const labels = cheapestMarker(cost, markers);
  const found = maskWhere(width, height, (i) => labels[i] === STONE);
  const leastPx = Math.max(leastStonePx, LEAST_STONE_SHARE * width * height);
  const joined = connectedPieces(cv, openMask(fillHoles(cv, found), 2), leastPx);
  const first = clearGaps(cv, joined, area, leastPx, markers)
    .flatMap(({ box, mask }) => splitTouching(cv, mask).map((part) => ({ box, mask: part })))
    .filter(({ mask }) => countInside(mask) >= leastPx);
  return regrowStones(cv, first, markers, cost)
    .filter(({ mask }) => countInside(mask) >= leastPx)
    .map((piece) => ({ ...piece, picture: small }))
    .filter((piece) => hasOutline(piece, edges, grain))
    .filter((piece) => ball === null || shareAlong(piece, ball) < MOST_ALONG_BALL)
    .filter((piece) => shareIn(piece, shaded) < SHADOW_SHARE && shareIn(piece, area) > STONE_SHARE);
}

function connectedPieces(cv: OpenCv, whole: Mask, leastPx: number): BoxedMask[] {
  const { labels, components } = labelComponents(cv, whole);
  return components
    .filter((component) => component.areaPx >= leastPx)
    .map(({ label, box }) => cutOut(labels, label, whole.width, box));
}

const countInside = (mask: Mask) => mask.data.reduce((sum, inside) => sum + inside, 0);

/** Share of a piece's pixels that lie in another mask of the whole picture. */
function shareIn({ box, mask }: BoxedMask, other: Mask): number {
  let both = 0;
  mask.data.forEach((inside, i) => {
    const pixel = (box.row + Math.floor(i / box.width)) * other.width + box.column + (i % box.width);
    if (inside && other.data[pixel]) both++;
  });
  return both / countInside(mask);
}

/** A stone ends at an edge nearly all around; a stain or a patch of colored light fades away. */
function hasOutline(piece: StonePiece, edges: Raster, grain: number): boolean {
  const clear = CLEAR_EDGE * grain;
  return shareOfRim(piece, (row, column) => strongestNear(edges, row, column) > clear) >= LEAST_OUTLINE;
}

/** Share of a piece's outline that runs along the ball. */
function shareAlong(piece: StonePiece, { row, column, radiusPx }: Circle): number {
  const near = Math.max(2, AT_BALL * radiusPx);
  return shareOfRim(piece, (y, x) => Math.abs(Math.hypot(y - row, x - column) - radiusPx) <= near);
}

/** Share of the pixels on a piece's rim of which something holds, by their place in the whole picture. */
function shareOfRim({ box, mask }: StonePiece, holds: (row: number, column: number) => boolean): number {
  const isInside = (y: number, x: number) =>
    y >= 0 && x >= 0 && y < mask.height && x < mask.width && mask.data[y * mask.width + x] === 1;
  let rim = 0;
  let held = 0;
  for (let y = 0; y < mask.height; y++) {
    for (let x = 0; x < mask.width; x++) {
      const isRim =
        isInside(y, x) &&
        !(isInside(y - 1, x) && isInside(y + 1, x) && isInside(y, x - 1) && isInside(y, x + 1));
      if (!isRim) continue;
      rim++;
      if (holds(y + box.row, x + box.column)) held++;
    }
  }
  return held / rim;
}

function strongestNear(edges: Raster, row: number, column: number): number {
  let most = 0;
  for (let y = Math.max(0, row - 2); y <= Math.min(edges.height - 1, row + 2); y++) {
    for (let x = Math.max(0, column - 2); x <= Math.min(edges.width - 1, column + 2); x++) {
      most = Math.max(most, edges.data[y * edges.width + x]!);
    }
  }
  return most;
}

/** Cost of a step: little on even ground, the square of the edge's strength on an outline. */
function crossingCost(edges: Raster, grain: number): Raster {
  const scale = 1 / (EDGE_TIMES_USUAL * grain);
  return { ...edges, data: edges.data.map((edge) => STEP_COST + (scale * edge) ** 2) };
}
