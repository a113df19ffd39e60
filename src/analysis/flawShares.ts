import { FLAW_CLASSES, FLAW_PLANES, type FlawNet } from '../vision/openFlawNet';
import type { FlawPlanes } from './flawPlanes';

/** Longest side run in one piece, pixels of the network's input; larger stones are cut into tiles. */
const MOST_SIDE_PX = 640;
/** Side of a tile, and what neighbors share: half of the overlap is wider than what a place depends on most. */
const TILE = { sidePx: 512, overlapPx: 128 } as const;

/**
 * Runs the flaw network over a stone, in tiles if it is large, and joins what it says into one map.
 *
 * Where tiles overlap the one counts whose edge is farther away.
 *
 * @returns 6 × rows/2 × columns/2 shares of the classes.
 */
export async function flawShares(net: FlawNet, planes: FlawPlanes): Promise<Float32Array> {
  const { rows, columns, data } = planes;
  if (rows <= MOST_SIDE_PX && columns <= MOST_SIDE_PX) return net.shares(data, rows, columns);
  const shares = new Float32Array((FLAW_CLASSES.length * rows * columns) / 4);
  for (const down of cuts(rows)) {
    for (const across of cuts(columns)) {
      const tile = cutOut(planes, down, across);
      const own = await net.shares(tile, down.size, across.size);
      paste(own, shares, down, across, columns / 2, rows / 2);
    }
  }
  return shares;
}

/** One tile along one side: where it lies, and the part of it that counts, pixels of the input. */
export interface Cut {
  readonly start: number;
  readonly size: number;
  readonly from: number;
  readonly to: number;
}

/**
 * Cuts a side into overlapping tiles whose counting parts cover it once.
 *
 * @param side - Multiple of 32, pixels.
 */
export function cuts(side: number): Cut[] {
  if (side <= MOST_SIDE_PX) return [{ start: 0, size: side, from: 0, to: side }];
  const step = TILE.sidePx - TILE.overlapPx;
  const starts: number[] = [];
  for (let start = 0; start + TILE.sidePx < side; start += step) starts.push(start);
  starts.push(side - TILE.sidePx);
  const between = (a: number, b: number) => 2 * Math.round((a + TILE.sidePx + b) / 4);
  return starts.map((start, i) => ({
    start,
    size: TILE.sidePx,
    from: i === 0 ? 0 : between(starts[i - 1]!, start),
    to: i === starts.length - 1 ? side : between(start, starts[i + 1]!),
  }));
}

function cutOut({ data, rows, columns }: FlawPlanes, down: Cut, across: Cut): Float32Array {
  const tile = new Float32Array(FLAW_PLANES * down.size * across.size);
  for (let plane = 0; plane < FLAW_PLANES; plane++) {
    for (let row = 0; row < down.size; row++) {
      const from = (plane * rows + down.start + row) * columns + across.start;
      tile.set(data.subarray(from, from + across.size), (plane * down.size + row) * across.size);
    }
  }
  return tile;
}

function paste(
  own: Float32Array,
  all: Float32Array,
  down: Cut,
  across: Cut,
  width: number,
  height: number,
): void {
  const ownWidth = across.size / 2;
  const ownHeight = down.size / 2;
  for (let kind = 0; kind < FLAW_CLASSES.length; kind++) {
    for (let row = down.from / 2; row < down.to / 2; row++) {
      const from = (kind * ownHeight + row - down.start / 2) * ownWidth - across.start / 2;
      all.set(
        own.subarray(from + across.from / 2, from + across.to / 2),
        (kind * height + row) * width + across.from / 2,
      );
    }
  }
}
