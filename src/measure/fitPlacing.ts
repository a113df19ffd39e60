import type { Placing } from '../image/photo';
import { solveSymmetric } from './solveSymmetric';

/** A place in one shot and where its content lies in another. */
export interface PlacedPatch {
  /** Counted from the photo's middle, pixels. */
  readonly row: number;
  readonly column: number;
  readonly down: number;
  readonly right: number;
}

/** How shots lie on each other, and what part of the patches agrees with that. */
export interface PlacingFit {
  readonly placing: Placing;
  /** 0 to 1. */
  readonly agreeing: number;
}

/** A patch agrees when it lies within so many pixels, in each round; the first only has to leave out the strays. */
const WITHIN_PX = [12, 4, 1.5, 1];
/** Turn and scale are fitted from so many patches on. */
const FOR_TURN = 6;
/** Weight of no turn and no change of scale, px²: a patch is off by 0.3 px, a camera on a stand turns by 0.002. */
const STEADINESS = (0.3 / 0.002) ** 2;

/**
 * Fits shift, turn and scale to the shifts of many patches; patches that disagree are left out.
 *
 * @param patches - At least one.
 */
export function fitPlacing(patches: readonly PlacedPatch[]): PlacingFit {
  let placing: Placing = { down: middle(patches, 'down'), right: middle(patches, 'right'), turn: 0, grow: 0 };
  let agreeing: readonly PlacedPatch[] = [];
  for (const withinPx of WITHIN_PX) {
    agreeing = patches.filter((patch) => missPx(patch, placing) <= withinPx);
    if (agreeing.length === 0) break;
    placing = leastMiss(agreeing) ?? placing;
  }
  return { placing, agreeing: agreeing.length / patches.length };
}

function missPx({ row, column, down, right }: PlacedPatch, placing: Placing): number {
  const { turn, grow } = placing;
  return Math.hypot(
    down - placing.down - grow * row - turn * column,
    right - placing.right - grow * column + turn * row,
  );
}

/** Least squares over [down, right, turn, grow], or over the first two when there are few patches. */
function leastMiss(patches: readonly PlacedPatch[]): Placing | null {
  const size = patches.length >= FOR_TURN ? 4 : 2;
  const matrix = new Float64Array(size * size);
  const right = new Float64Array(size);
  const add = (factors: readonly number[], value: number) => {
    for (let i = 0; i < size; i++) {
      right[i]! += factors[i]! * value;
      for (let j = 0; j < size; j++) matrix[i * size + j]! += factors[i]! * factors[j]!;
    }
  };
  for (const patch of patches) {
    add([1, 0, patch.column, patch.row], patch.down);
    add([0, 1, -patch.row, patch.column], patch.right);
  }
  for (let i = 2; i < size; i++) matrix[i * size + i]! += STEADINESS;
  const x = solveSymmetric(matrix, right);
  return x && { down: x[0]!, right: x[1]!, turn: x[2] ?? 0, grow: x[3] ?? 0 };
}

function middle(patches: readonly PlacedPatch[], key: 'down' | 'right'): number {
  const sorted = patches.map((patch) => patch[key]).sort((a, b) => a - b);
  return sorted[sorted.length >> 1]!;
}
