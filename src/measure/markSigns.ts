import type { Mask, Raster } from '../image/raster';
import type { ShareMark } from './shareMarks';

/** What the picture shows of a marked place, apart from what the network says. */
export interface MarkSigns {
  /** Mean logarithm of light inside less the median of the ring around. */
  readonly contrast: number;
  /** Rise of the logarithm away from the lamp over one spread of the mark, and across the lamp's way. */
  readonly along: number;
  readonly across: number;
  /** Standard deviation of the logarithm in the ring. */
  readonly ringNoise: number;
  /** How far its color lies from the ring's, in standard deviations of the ring's color. */
  readonly colorStep: number;
  /** Share of the mark that is its core: near 1 for a sharp mark. */
  readonly sharpness: number;
  /** Longest over shortest spread of the core. */
  readonly aspect: number;
}

/** A stone's light at the places of the map. */
export interface PlaceLight {
  /** Natural logarithm of luminance. */
  readonly logs: Raster;
  /** Logarithms of red over green and of blue over green. */
  readonly hues: readonly [Raster, Raster];
  readonly mask: Mask;
}

/** The core of a mark is where its share is above this part of its peak; at half of the peak sharpness is counted. */
const CORE = 0.4;
const HALF = 0.5;
/** The ring around a mark begins and ends this far outside it, places. */
const RING = { from: 2, to: 6 } as const;
/** Added to standard deviations before something is divided by them. */
const LEAST_HUE = 0.03;
const NO_RING = 0.1;

/**
 * Signs of a mark of the network.
 *
 * @param lampXy - Toward the lamp: x right, y up; any length, (0, 0) when nobody knows.
 */
export function markSigns(mark: ShareMark, light: PlaceLight, lampXy: readonly [number, number]): MarkSigns {
  const { logs, hues, mask } = light;
  const { width } = logs;
  const core = mark.places.filter((_, i) => mark.values[i]! > CORE * mark.peak);
  const ring = ringAround(mark.places, mask);
  const valuesOf = (raster: Raster, places: readonly number[]) => places.map((place) => raster.data[place]!);
  const level =
    mean(valuesOf(logs, core)) -
    (ring.length > 0 ? median(valuesOf(logs, ring)) : mean(valuesOf(logs, core)));
  const step = hues.map((hue) =>
    ring.length > 0 ? mean(valuesOf(hue, core)) - median(valuesOf(hue, ring)) : 0,
  );
  const spread = hues.map((hue) => deviation(valuesOf(hue, ring)));
  const rows = core.map((place) => Math.floor(place / width));
  const columns = core.map((place) => place % width);
  return {
    contrast: level,
    ...leaning(valuesOf(logs, core), rows, columns, lampXy),
    ringNoise: ring.length > 5 ? deviation(valuesOf(logs, ring)) : NO_RING,
    colorStep: Math.hypot(step[0]!, step[1]!) / (Math.hypot(spread[0]!, spread[1]!) + LEAST_HUE),
    sharpness: mark.values.filter((value) => value > HALF * mark.peak).length / mark.values.length,
    aspect: aspectOf(rows, columns),
  };
}

function leaning(
  values: readonly number[],
  rows: readonly number[],
  columns: readonly number[],
  lampXy: readonly [number, number],
): { along: number; across: number } {
  const length = Math.hypot(...lampXy);
  if (length < 1e-3) return { along: 0, across: 0 };
  const [ux, uy] = [lampXy[0] / length, lampXy[1] / length];
  const [middleRow, middleColumn] = [mean(rows), mean(columns)];
  const lean = (distance: (right: number, down: number) => number) => {
    const far = rows.map((row, i) => distance(columns[i]! - middleColumn, row - middleRow));
    const spread = Math.sqrt(mean(far.map((d) => d * d)));
    return mean(far.map((d, i) => d * values[i]!)) / (spread + 1e-6);
  };
  return {
    along: lean((right, down) => down * uy - right * ux),
    across: lean((right, down) => right * uy + down * ux),
  };
}

/** Square root of the ratio of the principal variances of the core's places. */
function aspectOf(rows: readonly number[], columns: readonly number[]): number {
  const [r, c] = [mean(rows), mean(columns)];
  const rr = mean(rows.map((row) => (row - r) ** 2)) + 1 / 12;
  const cc = mean(columns.map((column) => (column - c) ** 2)) + 1 / 12;
  const rc = mean(rows.map((row, i) => (row - r) * (columns[i]! - c)));
  const half = Math.hypot((rr - cc) / 2, rc);
  return Math.sqrt(((rr + cc) / 2 + half) / ((rr + cc) / 2 - half));
}

/** Places of the stone that lie a few steps outside a mark; steps go to the four neighbors. */
function ringAround(places: readonly number[], { width, height, data }: Mask): number[] {
  const steps = new Map(places.map((place) => [place, 0]));
  let edge = [...places];
  for (let step = 1; step <= RING.to; step++) {
    const next: number[] = [];
    for (const place of edge) {
      const row = Math.floor(place / width);
      const column = place % width;
      const near = [
        row > 0 ? place - width : -1,
        row < height - 1 ? place + width : -1,
        column > 0 ? place - 1 : -1,
        column < width - 1 ? place + 1 : -1,
      ];
      for (const at of near) {
        if (at < 0 || steps.has(at)) continue;
        steps.set(at, step);
        next.push(at);
      }
    }
    edge = next;
  }
  return [...steps].filter(([at, step]) => step > RING.from && data[at]).map(([at]) => at);
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);

function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
