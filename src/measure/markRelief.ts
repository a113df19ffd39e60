import type { Mask, Raster } from '../image/raster';

/** How the brightness of a marked place leans; see `isHollow`. */
export interface MarkRelief {
  /** Mean logarithm inside less the median of the ring around. */
  readonly contrast: number;
  /** Rise of the logarithm away from the lamp over one spread of the mark. */
  readonly along: number;
  /** The same across the lamp. */
  readonly across: number;
}

/** The ring around a mark begins and ends this far outside it, places. */
const RING = { from: 2, to: 5 } as const;
/** Bounds of a hollow, set on the development trays of models/README.md. */
const HOLLOW = { mostDark: -0.7, mostPale: 0.8, leastAlong: -0.05, mostAcross: 0.12 } as const;

/**
 * Measures how a mark's brightness leans along and across the lamp.
 *
 * @param logs - Natural logarithm of luminance.
 * @param places - Row-major places of the mark.
 * @param lampXy - Toward the lamp: x right, y up; any length but 0.
 * @param mask - The stone.
 */
export function markRelief(
  logs: Raster,
  places: readonly number[],
  lampXy: readonly [number, number],
  mask: Mask,
): MarkRelief {
  const { width } = logs;
  const length = Math.hypot(...lampXy) + 1e-9;
  const [ux, uy] = [lampXy[0] / length, lampXy[1] / length];
  const rows = places.map((place) => Math.floor(place / width));
  const columns = places.map((place) => place % width);
  const values = places.map((place) => logs.data[place]!);
  const middleRow = mean(rows);
  const middleColumn = mean(columns);
  const lean = (distance: (right: number, down: number) => number) => {
    const far = places.map((_, i) => distance(columns[i]! - middleColumn, rows[i]! - middleRow));
    const spread = Math.sqrt(mean(far.map((d) => d * d)));
    return mean(far.map((d, i) => d * values[i]!)) / (spread + 1e-6);
  };
  const ring = ringMedian(logs, places, mask);
  return {
    contrast: ring === null ? 0 : mean(values) - ring,
    along: lean((right, down) => down * uy - right * ux),
    across: lean((right, down) => right * uy + down * ux),
  };
}

/**
 * Whether a mark may be a hollow: in one the wall next to the lamp is dark and the far one bright, while a colored
 * spot leans anywhere, and a mineral grain is often far darker than a floor that light from the room reaches.
 */
export function isHollow({ contrast, along, across }: MarkRelief): boolean {
  return (
    contrast > HOLLOW.mostDark &&
    contrast < HOLLOW.mostPale &&
    along > HOLLOW.leastAlong &&
    Math.abs(across) < HOLLOW.mostAcross
  );
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

/** Median of the stone around a mark; null when the mark fills it. */
function ringMedian(logs: Raster, places: readonly number[], mask: Mask): number | null {
  const { width, height } = logs;
  const steps = new Map(places.map((place) => [place, 0]));
  let edge = [...places];
  for (let step = 1; step <= RING.to; step++) {
    const next: number[] = [];
    for (const place of edge) {
      const row = Math.floor(place / width);
      const column = place % width;
      for (const [r, c] of [
        [row - 1, column],
        [row + 1, column],
        [row, column - 1],
        [row, column + 1],
      ] as const) {
        const at = r * width + c;
        if (r < 0 || c < 0 || r >= height || c >= width || steps.has(at)) continue;
        steps.set(at, step);
        next.push(at);
      }
    }
    edge = next;
  }
  const around = [...steps]
    .filter(([at, step]) => step > RING.from && mask.data[at])
    .map(([at]) => logs.data[at]!)
    .sort((a, b) => a - b);
  const half = around.length >> 1;
  if (around.length === 0) return null;
  return around.length % 2 ? around[half]! : (around[half - 1]! + around[half]!) / 2;
}
