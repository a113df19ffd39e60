import { type EdgeRegion, edgeLine } from './edgeLine';
import { edgeResponse, type ResponsePoint } from './edgeResponse';
import { EDGE_SAMPLES_PER_PX, edgeSpread } from './edgeSpread';

/** Sharpness of a camera, read off one slanted edge. */
export interface EdgeSharpness {
  /** Tilt from the vertical, degrees; positive when the edge moves to the right on its way down. */
  readonly angleDeg: number;
  /** Frequency at which half the contrast is left, cycles per pixel; 1 when more than half is left at 1. */
  readonly mtf50CyclesPerPx: number;
  /** Distance at right angles to the edge over which brightness rises from 10 % to 90 %, pixels. */
  readonly rise10to90Px: number;
  readonly sfr: readonly ResponsePoint[];
}

/** Linear brightness of the two sides of an edge. */
export interface EdgeLevels {
  readonly left: number;
  readonly right: number;
}

/**
 * Measures a camera's sharpness on a near-vertical straight edge.
 *
 * @param region - Linear light, any scale; the edge tilted by about 3 to 10 degrees and crossing top and bottom.
 * @param levels - Brightness that counts as 0 % and 100 % of the rise; measured at the region's sides when left out.
 * @returns Tilt, half-contrast frequency, rise and the whole response.
 * @throws RangeError if the region is too small, holds no edge, or its edge is too upright or runs out of it.
 * @see ISO 12233:2017, annex D; valid for edges straight to a fraction of a pixel.
 */
export function slantedEdge(region: EdgeRegion, levels?: EdgeLevels): EdgeSharpness {
  const line = edgeLine(region);
  const spread = edgeSpread(region, line);
  const sfr = edgeResponse(spread);
  return {
    angleDeg: (Math.atan(line.columnsPerRow) * 180) / Math.PI,
    mtf50CyclesPerPx: halfContrast(sfr),
    rise10to90Px: rise(spread, levels ?? sideLevels(spread)),
    sfr,
  };
}

function halfContrast(sfr: readonly ResponsePoint[]): number {
  const below = sfr.findIndex(([, contrast]) => contrast < 0.5);
  if (below < 1) return 1;
  const [lowFrequency, above] = sfr[below - 1]!;
  const [highFrequency, under] = sfr[below]!;
  return lowFrequency + ((above - 0.5) / (above - under)) * (highFrequency - lowFrequency);
}

function sideLevels(spread: Float64Array): EdgeLevels {
  const border = Math.max(1, Math.floor(spread.length / 8));
  return { left: mean(spread.subarray(0, border)), right: mean(spread.subarray(spread.length - border)) };
}

function rise(spread: Float64Array, { left, right }: EdgeLevels): number {
  const share = spread.map((value) => (value - left) / (right - left));
  const middle = nearestCrossing(share, 0.5, (spread.length - 1) / 2);
  const from = nearestCrossing(share, 0.1, middle);
  const to = nearestCrossing(share, 0.9, middle);
  return (to - from) / EDGE_SAMPLES_PER_PX;
}

/** Place where a rising curve passes a level, the one closest to `near`. */
function nearestCrossing(share: Float64Array, level: number, near: number): number {
  let best = Number.NaN;
  for (let sample = 1; sample < share.length; sample++) {
    const before = share[sample - 1]!;
    const after = share[sample]!;
    if (!(before < level && after >= level)) continue;
    const place = sample - 1 + (level - before) / (after - before);
    if (!(Math.abs(place - near) >= Math.abs(best - near))) best = place;
  }
  return best;
}

function mean(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
