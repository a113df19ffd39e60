/** Longest and shorter side of a frame that is looked at while framing, pixels. */
const MOST = { long: 1280, short: 720 };

/**
 * Size to which a frame of the live picture is reduced before it is looked at.
 *
 * @param widthPx - Width of the camera's picture, pixels, ≥ 1.
 * @param heightPx - Its height.
 * @returns The largest size of the same shape within 1280 × 720, upright or lying; never more than the camera gives.
 */
export function frameSize(widthPx: number, heightPx: number): { widthPx: number; heightPx: number } {
  const long = Math.max(widthPx, heightPx);
  const short = Math.min(widthPx, heightPx);
  const share = Math.min(1, MOST.long / long, MOST.short / short);
  const side = (px: number) => Math.max(1, Math.round(share * px));
  return { widthPx: side(widthPx), heightPx: side(heightPx) };
}
