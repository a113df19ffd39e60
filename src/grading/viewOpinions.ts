import type { MeasuredStone } from './measuredStone';
import type { Opinion } from './opinion';
import { plainNumber } from './plainNumber';

/** Fewest pixels along a stone for its flaws to be judged. Our default. */
const FEWEST_PX_ALONG = 60;
/** Least share of the outline that must have been inspected. Our default. */
const LEAST_INSPECTED = 0.3;

/**
 * What stands in the way of seeing a stone well enough.
 *
 * @param stone - A measured stone.
 * @param mmPerPx - Scale of the photo; left out when it is not known.
 * @returns Calls to look closer; none when the stone was seen well.
 */
export function viewOpinions(stone: MeasuredStone, mmPerPx?: number): Opinion[] {
  const reasons: string[] = [];
  if (stone.cutOff) reasons.push('The edge of the photo cuts this stone off: move it into the picture.');
  const along = mmPerPx === undefined ? Number.POSITIVE_INFINITY : stone.lengthMm / mmPerPx;
  if (along < FEWEST_PX_ALONG) {
    reasons.push(`It is only ${plainNumber(along)} pixels long, too few to see pits: go closer.`);
  }
  const inspected = (100 * stone.inspectedCm2) / stone.areaMm2;
  if (!(inspected >= LEAST_INSPECTED)) {
    const share = Math.round(100 * (inspected || 0));
    reasons.push(
      `Only ${share} % of what the photo shows of it could be inspected: turn it and take another.`,
    );
  }
  return reasons.map((reason) => ({ action: 'look-closer', reason }));
}
