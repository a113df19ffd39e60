import type { Shadow } from './ballShadow';
import { USUAL_SHADOW } from './ballShadow';
import type { LampLines } from './lampLines';
import type { TrayDifference } from './trayDifference';

/** Part of a line along the light, from its far end, where full shadow lies if there is any. */
const FAR_END = { from: 0.06, to: 0.3 };
/** Full shadow is darker than the penumbra around it: quantile taken over the far ends. */
const DARK_QUANTILE = 0.25;
/** Darker than this there is a shadow at all, ln units. */
const LEAST_DEPTH = -0.1;
/** Only this far below that depth, ln units, no shadow reaches: some lie deeper under their stones than others. */
const BELOW_SHADOW = 0.7;
/** Fewer dark pixels than this tell nothing. */
const FEWEST_PIXELS = 60;

/**
 * How dark and of what color full shadow is, read at the far ends of all areas of stone and shadow.
 *
 * @param difference - Departures from the tray, ln units.
 * @param lines - Lines along the light through those areas.
 * @returns A low quantile over the far ends, and their median color; the usual shadow when they are not dark.
 */
export function photoShadow(difference: TrayDifference, { towardLamp, awayFromLamp }: LampLines): Shadow {
  const dark: number[] = [];
  for (let i = 0; i < towardLamp.length; i++) {
    const share = awayFromLamp[i]! / (awayFromLamp[i]! + towardLamp[i]! + 1e-9);
    const isFarEnd = share > FAR_END.from && share < FAR_END.to;
    if (isFarEnd && difference.lightness[i]! < LEAST_DEPTH) dark.push(i);
  }
  if (dark.length < FEWEST_PIXELS) return USUAL_SHADOW;
  const quantile = (field: Float32Array, share: number) =>
    Float32Array.from(dark, (i) => field[i]!).sort()[Math.floor(share * dark.length)]!;
  const depth = Math.max(-3, quantile(difference.lightness, DARK_QUANTILE));
  return {
    depth,
    darkest: depth - BELOW_SHADOW,
    isRead: false,
    redGreen: quantile(difference.redGreen, 0.5),
    blueGreen: quantile(difference.blueGreen, 0.5),
  };
}
