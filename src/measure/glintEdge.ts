import type { Mask, Raster } from '../image/raster';
import type { BrightPatch } from './brightPatches';

/** Height, edge and color of a bright spot. */
export interface GlintEdge {
  /** Mean radiance inside, less the body's. */
  readonly height: number;
  /** Median radiance around it. */
  readonly body: number;
  /** Radius of the disc equal in area to what is above half the height, pixels. */
  readonly radiusPx: number;
  /** Height over the slope at the edge, pixels. */
  readonly risePx: number;
  /** Spread of red, green and blue of what stands out, share of their mean: 0 for white light. */
  readonly color: number;
}

/** The ring around a spot in which the body is read: inner and outer radius, in radii and pixels. */
const RING = { inner: 1.6, innerPx: 2, outer: 2.4, outerPx: 4 };
/** Edge pixels whose slope counts: upper quantile, since pattern and flaws only make edges softer. */
const SLOPE_QUANTILE = 0.6;

/**
 * Measures a bright spot on a stone.
 *
 * @param stone - RGB in linear light, lamp white.
 * @param radiance - Its luminance.
 * @param mask - The stone.
 * @param patch - Pixels of the spot, roughly.
 */
export function glintEdge(stone: Raster, radiance: Raster, mask: Mask, patch: BrightPatch): GlintEdge {
  const { width, data } = radiance;
  const around = ringAround(mask, patch);
  const body = median(around.map((i) => data[i]!));
  const values = patch.pixels.map((i) => data[i]!).sort((a, b) => b - a);
  const peak = values[Math.floor(0.25 * values.length)]! - body;
  const inside = new Set(patch.pixels.filter((i) => data[i]! > body + 0.5 * peak));
  const beside = [1, -1, width, -width];
  const isEdge = (i: number) => beside.some((step) => !inside.has(i + step));
  const core = [...inside].filter((i) => !isEdge(i));
  const heights = (core.length > 2 ? core : [...inside]).map((i) => data[i]!);
  const height = heights.reduce((sum, value) => sum + value, 0) / Math.max(1, heights.length) - body;
  const slopes = [...inside].filter(isEdge).map((i) => {
    const right = (data[i + 1] ?? body) - (data[i - 1] ?? body);
    const down = (data[i + width] ?? body) - (data[i - width] ?? body);
    return Math.hypot(right, down) / 2;
  });
  slopes.sort((a, b) => a - b);
  const slope = slopes[Math.floor(SLOPE_QUANTILE * slopes.length)] ?? 0;
  return {
    height,
    body,
    radiusPx: Math.sqrt(inside.size / Math.PI),
    risePx: slope > 0 ? height / slope : Number.POSITIVE_INFINITY,
    color: colorSpread(stone, [...inside], around),
  };
}

function ringAround(mask: Mask, { row, column, pixels }: BrightPatch): number[] {
  const radius = Math.sqrt(pixels.length / Math.PI);
  const [from, to] = [RING.inner * radius + RING.innerPx, RING.outer * radius + RING.outerPx];
  const ring: number[] = [];
  for (let y = Math.max(0, Math.floor(row - to)); y <= Math.min(mask.height - 1, row + to); y++) {
    for (let x = Math.max(0, Math.floor(column - to)); x <= Math.min(mask.width - 1, column + to); x++) {
      const apart = Math.hypot(y - row, x - column);
      if (apart > from && apart < to && mask.data[y * mask.width + x]) ring.push(y * mask.width + x);
    }
  }
  return ring;
}

const median = (values: number[]) => values.sort((a, b) => a - b)[values.length >> 1] ?? 0;

function colorSpread(stone: Raster, inside: readonly number[], around: readonly number[]): number {
  const mean = (places: readonly number[], channel: number) =>
    places.reduce((sum, i) => sum + stone.data[3 * i + channel]!, 0) / Math.max(1, places.length);
  const over = [0, 1, 2].map((channel) => mean(inside, channel) - mean(around, channel));
  const whole = (over[0]! + over[1]! + over[2]!) / 3;
  return (Math.max(...over) - Math.min(...over)) / Math.max(1e-6, whole);
}
