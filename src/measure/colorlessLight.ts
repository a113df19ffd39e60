import type { Mask, Raster } from '../image/raster';
import { maskedBlur } from './maskedBlur';
import type { Blur } from './stoneSurface';

/** Cells of chromaticity along each axis, and the range they cover about gray. */
const CELLS = 48;
const RANGE = 0.4;
/** Chromaticity is averaged over this, mm: less than the smallest pit, more than the camera's grain. */
const COLOR_SIGMA_MM = 0.1;
/** Slow shading is what remains after averaging over this, mm: more than any flaw. */
const SHADING_SIGMA_MM = 3;
/** Spread of a cell's say over its neighbors, cells. */
const CELL_SIGMA = 1;
/** A color must cover about this much of the stone for its light to be known, share of the area. */
const KNOWN_SHARE = 0.01;

/**
 * Takes off what the color of each place explains of its light, and slow shading.
 *
 * A mineral has its own hue and its own brightness, wherever it lies on the stone; shade darkens without
 * choosing a hue. So light is averaged over all places of like chromaticity and that average is taken off.
 *
 * @param logLight - Log light of the stone, filled beyond it.
 * @param color - RGB in linear light.
 * @param mask - The stone.
 * @param mmPerPx - Scale.
 * @param blur - Gaussian blur of one channel.
 * @returns Log light without pattern, ln units; about 0 on an even stone.
 */
export function colorlessLight(
  logLight: Raster,
  color: Raster,
  mask: Mask,
  mmPerPx: number,
  blur: Blur,
): Raster {
  const { width, height } = logLight;
  const slow = maskedBlur(logLight, mask, SHADING_SIGMA_MM / mmPerPx, blur);
  const detail = logLight.data.map((value, i) => value - slow.data[i]!);
  const [red, blue] = chromaticities(color, Math.max(0.6, COLOR_SIGMA_MM / mmPerPx), blur);
  const cell = (value: number) => Math.min(CELLS - 1.001, Math.max(0, (value / RANGE + 0.5) * (CELLS - 1)));
  const sums = new Float32Array(CELLS * CELLS);
  const counts = new Float32Array(CELLS * CELLS);
  let area = 0;
  mask.data.forEach((inside, i) => {
    if (!inside) return;
    const at = Math.round(cell(red[i]!)) * CELLS + Math.round(cell(blue[i]!));
    sums[at]! += detail[i]!;
    counts[at]! += 1;
    area++;
  });
  const table = (data: Float32Array) =>
    blur({ width: CELLS, height: CELLS, channels: 1, data }, CELL_SIGMA).data;
  const [sum, count] = [table(sums), table(counts)];
  const known = (KNOWN_SHARE * area) / (2 * Math.PI * CELL_SIGMA ** 2);
  const means = sum.map((value, k) => value / (count[k]! + known));
  const data = detail.map((value, i) =>
    mask.data[i] === 0 ? value : value - between(means, cell(red[i]!), cell(blue[i]!)),
  );
  return { width, height, channels: 1, data };
}

function chromaticities(color: Raster, sigmaPx: number, blur: Blur): [Float32Array, Float32Array] {
  const { width, height } = color;
  const channel = (c: number) =>
    blur(
      {
        width,
        height,
        channels: 1,
        data: Float32Array.from({ length: width * height }, (_, i) => color.data[3 * i + c]!),
      },
      sigmaPx,
    ).data;
  const [r, g, b] = [channel(0), channel(1), channel(2)];
  const share = (one: Float32Array) =>
    one.map((value, i) => value / Math.max(1e-5, r[i]! + g[i]! + b[i]!) - 1 / 3);
  return [share(r), share(b)];
}

/** Bilinear reading of the square table. */
function between(table: Float32Array, row: number, column: number): number {
  const r = Math.floor(row);
  const c = Math.floor(column);
  const [y, x] = [row - r, column - c];
  const i = r * CELLS + c;
  return (
    (1 - y) * ((1 - x) * table[i]! + x * table[i + 1]!) +
    y * ((1 - x) * table[i + CELLS]! + x * table[i + CELLS + 1]!)
  );
}
