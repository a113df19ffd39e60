import { Refusal } from './notice';

const SMALLEST_SIDE_PX = 200;
const LARGEST_AREA_PX = 50e6;

/**
 * Refuses a photo too small to measure or too large to hold.
 *
 * @throws Refusal `too-small` under 200 pixels on the shorter side, `too-large` over 50 megapixels.
 */
export function checkSize(widthPx: number, heightPx: number): void {
  if (Math.min(widthPx, heightPx) < SMALLEST_SIDE_PX) throw new Refusal('too-small');
  if (widthPx * heightPx > LARGEST_AREA_PX) throw new Refusal('too-large');
}
