import type { StoneReport } from '../../src/analysis/report';
import { fillPolygon } from '../../src/image/fillPolygon';
import type { TrueStone } from './truth';

export interface StoneMatch {
  readonly stone: StoneReport;
  readonly truth: TrueStone;
  /** Intersection over union of the outlines' areas. */
  readonly overlap: number;
}

/** Outlines are compared on a grid this many times as coarse as the photo. */
const COARSE = 2;
/** Two outlines are of the same stone from this overlap on. */
const LEAST_OVERLAP = 0.5;

/** Pairs found stones with true ones by their outlines. */
export function matchStones(
  stones: readonly StoneReport[],
  truths: readonly TrueStone[],
  widthPx: number,
  heightPx: number,
): StoneMatch[] {
  const filled = (outline: readonly (readonly [number, number])[]) =>
    fillPolygon(
      outline.map(([row, column]) => [row / COARSE, column / COARSE] as const),
      Math.ceil(widthPx / COARSE),
      Math.ceil(heightPx / COARSE),
    ).data;
  const found = stones.map((stone) => filled(stone.outline));
  return truths.flatMap((truth) => {
    const own = filled(truth.outline);
    const overlaps = found.map((other) => overlapOf(own, other));
    const best = overlaps.indexOf(Math.max(...overlaps));
    return best >= 0 && overlaps[best]! >= LEAST_OVERLAP
      ? [{ stone: stones[best]!, truth, overlap: overlaps[best]! }]
      : [];
  });
}

function overlapOf(a: Uint8Array, b: Uint8Array): number {
  let both = 0;
  let either = 0;
  for (let i = 0; i < a.length; i++) {
    both += a[i]! & b[i]!;
    either += a[i]! | b[i]!;
  }
  return either === 0 ? 0 : both / either;
}
