import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { MeasuredStone } from './measuredStone';
import type { Opinion } from './opinion';

/** Fewest pixels along a stone for its flaws to be judged. Our default. */
const FEWEST_PX_ALONG = 60;
/** Least share of the outline that must have been inspected. Our default. */
const LEAST_INSPECTED = 0.3;

/**
 * What stands in the way of seeing a stone well enough, or of taking it for one.
 *
 * @param stone - A measured stone.
 * @param mmPerPx - Scale of the photo; left out when it is not known.
 * @returns Calls to look closer; none when the stone was seen well.
 */
export function viewOpinions(stone: MeasuredStone, mmPerPx?: number): Opinion[] {
  const words = texts().verdicts.reasons;
  const reasons: string[] = [];
  if (stone.unlike) reasons.push(words.unlike[stone.unlike]);
  if (stone.cutOff) reasons.push(words.cutOff);
  const along = mmPerPx === undefined ? Number.POSITIVE_INFINITY : stone.lengthMm / mmPerPx;
  if (along < FEWEST_PX_ALONG) reasons.push(words.fewPixels(plainNumber(along)));
  const inspected = (100 * stone.inspectedCm2) / stone.areaMm2;
  if (!(inspected >= LEAST_INSPECTED)) {
    const share = Math.round(100 * (inspected || 0));
    reasons.push(words.littleInspected(`${share} %`));
  }
  return reasons.map((reason) => ({ action: 'look-closer', reason }));
}
