import type { Mask, Raster } from '../image/raster';
import type { DarkLine, LinePixel } from './darkLines';

/** What tells a fracture from a band or vein. Light in ln units. */
export interface LineSigns {
  readonly lengthMm: number;
  /** Median over the line: how much darker it is than the darker of its two sides. */
  readonly depth: number;
  /** Share of the line that is at least half that deep. */
  readonly constancy: number;
  /** Mean difference of light between the two sides; a band's edge has much. */
  readonly sidesApart: number;
  /** Median distance between the two sides' chromaticities. */
  readonly sidesHue: number;
  /** Median distance of the line's chromaticity from those its sides turn to by shade and white light. */
  readonly hueOff: number;
  /** Mean light of the side away from the lamp less that of the side toward it, where the line runs across the lamp. */
  readonly farLip: number;
  /** Distance between the line's farthest pixels as a share of its length. */
  readonly stretch: number;
  /** Standard deviation of log light along the line less that along its sides. */
  readonly evenness: number;
}

/** Where the sides of a line are read, mm from its middle. */
const SIDE_MM = 0.55;

/**
 * Measures a dark line.
 *
 * @param line - Its middle pixels.
 * @param light - Log light.
 * @param color - RGB in linear light.
 * @param mask - The stone.
 * @param mmPerPx - Scale.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 */
export function lineSigns(
  line: DarkLine,
  light: Raster,
  color: Raster,
  mask: Mask,
  mmPerPx: number,
  [lampX, lampY]: readonly [number, number],
): LineSigns {
  const side = SIDE_MM / mmPerPx;
  const read = line.pixels.flatMap((pixel) => {
    const { row, column, acrossDown, acrossRight } = pixel;
    const sign = acrossRight * lampX - acrossDown * lampY >= 0 ? 1 : -1;
    const at = (distance: number) => {
      const r = Math.round(row + sign * distance * acrossDown);
      const c = Math.round(column + sign * distance * acrossRight);
      return r >= 0 && c >= 0 && r < mask.height && c < mask.width && mask.data[r * mask.width + c]
        ? r * mask.width + c
        : -1;
    };
    const [here, toward, away] = [row * mask.width + column, at(side), at(-side)];
    if (toward < 0 || away < 0) return [];
    const facing = Math.abs(acrossRight * lampX - acrossDown * lampY);
    return [
      {
        core: light.data[here]!,
        toward: light.data[toward]!,
        away: light.data[away]!,
        facing,
        color: colorsApart(color, here, toward, away),
      },
    ];
  });
  const depths = read.map(({ core, toward, away }) => Math.min(toward, away) - core).sort((a, b) => a - b);
  const depth = median(depths);
  const facing = read.reduce((sum, one) => sum + one.facing, 0);
  return {
    lengthMm: lengthPx(line.pixels) * mmPerPx,
    depth,
    constancy: depths.filter((one) => one > depth / 2).length / Math.max(1, line.pixels.length),
    sidesApart: Math.abs(mean(read.map(({ toward, away }) => toward - away))),
    sidesHue: median(read.map((one) => one.color.sides).sort((a, b) => a - b)),
    hueOff: median(read.map((one) => one.color.off).sort((a, b) => a - b)),
    farLip: read.reduce((sum, one) => sum + one.facing * (one.away - one.toward), 0) / Math.max(1e-6, facing),
    stretch: extentPx(line.pixels) / Math.max(1, lengthPx(line.pixels)),
    evenness:
      deviation(read.map((one) => one.core)) - deviation(read.map((one) => (one.toward + one.away) / 2)),
  };
}

const mean = (values: readonly number[]) =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
const median = (sorted: readonly number[]) => sorted[sorted.length >> 1] ?? 0;

function deviation(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
}

/**
 * Length of a thin line. One pixel stands for one step along the axis nearer to the line's direction; where the
 * line is two pixels thick across that axis, each counts half.
 */
function lengthPx(pixels: readonly LinePixel[]): number {
  const taken = new Set(pixels.map(({ row, column }) => `${row} ${column}`));
  return pixels.reduce((sum, { row, column, acrossDown, acrossRight }) => {
    const isSteep = Math.abs(acrossRight) > Math.abs(acrossDown);
    const beside = [-1, 1].filter((step) =>
      taken.has(isSteep ? `${row} ${column + step}` : `${row + step} ${column}`),
    );
    return sum + 1 / (1 + beside.length) / Math.max(Math.abs(acrossDown), Math.abs(acrossRight));
  }, 0);
}

function extentPx(pixels: readonly LinePixel[]): number {
  let most = 0;
  for (let angle = 0; angle < 180; angle += 15) {
    const [s, c] = [Math.sin((angle * Math.PI) / 180), Math.cos((angle * Math.PI) / 180)];
    const along = pixels.map(({ row, column }) => row * s + column * c);
    most = Math.max(most, Math.max(...along) - Math.min(...along));
  }
  return most;
}

function colorsApart({ data }: Raster, here: number, toward: number, away: number) {
  const chroma = (i: number) => {
    const all = Math.max(1e-6, data[3 * i]! + data[3 * i + 1]! + data[3 * i + 2]!);
    return [data[3 * i]! / all - 1 / 3, data[3 * i + 2]! / all - 1 / 3] as const;
  };
  const [core, one, other] = [chroma(here), chroma(toward), chroma(away)];
  const off = (ring: readonly [number, number]) => {
    const along = (core[0] * ring[0] + core[1] * ring[1]) / Math.max(1e-9, ring[0] ** 2 + ring[1] ** 2);
    const kept = Math.min(1, Math.max(0, along));
    return Math.hypot(core[0] - kept * ring[0], core[1] - kept * ring[1]);
  };
  return { sides: Math.hypot(one[0] - other[0], one[1] - other[1]), off: Math.min(off(one), off(other)) };
}
