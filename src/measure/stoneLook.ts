import { nthSmallest } from '../image/nthSmallest';
import type { Mask, Raster } from '../image/raster';
import { cielab } from '../optics/cielab';
import { shrinkMask } from './shrinkMask';
import type { Blur } from './stoneSurface';

/** What a stone looks like, whichever way it lies: enough to know it again. */
export interface StoneLook {
  /** Quantiles of L*, then of a*, then of b*, at the shares of `QUANTILES`. */
  readonly colors: readonly number[];
  /** Spread of L*, then of a*, then of b* in bands of size, ln units. */
  readonly pattern: readonly number[];
  /** The outline without its size, see `silhouette`. */
  readonly silhouette: readonly number[];
  /** Length, width and area of the outline: mm, mm, mm². */
  readonly size: readonly [lengthMm: number, widthMm: number, areaMm2: number];
}

export const QUANTILES = [0.1, 0.3, 0.5, 0.7, 0.9] as const;
/** Left out at the outline, where shade and tray mix in, mm. */
const RIM_MM = 1;
/** Bands of size: differences of Gaussians of these spreads, mm. */
const SCALES_MM = [0.2, 0.4, 0.8, 1.6, 3.2] as const;
/** Added before logarithms, L* units: the noise of a photo. */
const LEAST_SPREAD = 0.3;

/**
 * Measures color and pattern of a stone, leaving out its rim.
 *
 * @param color - RGB in linear light, the lamp's color divided out.
 * @param mask - The stone.
 * @param mmPerPx - Scale.
 * @param white - Light that a white surface facing the lamp sends back.
 * @param form - The outline's silhouette, and its length, width (mm) and area (mm²).
 * @param blur - Gaussian blur.
 */
export function stoneLook(
  color: Raster,
  mask: Mask,
  mmPerPx: number,
  white: number,
  form: Pick<StoneLook, 'silhouette' | 'size'>,
  blur: Blur,
): StoneLook {
  const inner = shrinkMask(mask, Math.max(1, Math.round(RIM_MM / mmPerPx)));
  const use = inner.data.some((inside) => inside === 1) ? inner : mask;
  const axes = labAxes(color, white);
  const smooth = smoothOver(use, mmPerPx, blur);
  const bands = axes.map((axis) => bandSpreads(axis, use, smooth));
  return {
    colors: axes.flatMap((axis) => quantiles(axis, use)),
    pattern: bands.flat().map((spread) => Math.log(spread + LEAST_SPREAD)),
    ...form,
  };
}

/** L*, a* and b* as pictures. */
function labAxes({ width, height, data }: Raster, white: number): [Raster, Raster, Raster] {
  const axis = (): Raster => ({ width, height, channels: 1, data: new Float32Array(width * height) });
  const axes: [Raster, Raster, Raster] = [axis(), axis(), axis()];
  const share = (at: number) => Math.max(0, data[at]!) / white;
  for (let i = 0, j = 0; i < width * height; i++, j += 3) {
    const [lightness, a, b] = cielab([share(j), share(j + 1), share(j + 2)]);
    axes[0].data[i] = lightness;
    axes[1].data[i] = a;
    axes[2].data[i] = b;
  }
  return axes;
}

function quantiles({ data }: Raster, mask: Mask): number[] {
  const inside = new Float32Array(data.length);
  let count = 0;
  for (let i = 0; i < data.length; i++) if (mask.data[i] === 1) inside[count++] = data[i]!;
  const values = inside.subarray(0, count);
  return QUANTILES.map((share) => nthSmallest(values, Math.floor(share * (count - 1))) ?? 0);
}

/** Means over the mask around each pixel, at each of the scales. */
type Smooth = (axis: Raster) => Float32Array[];

/** Blurs over a mask; the mask's own blurs are worked out once for all axes. */
function smoothOver(mask: Mask, mmPerPx: number, blur: Blur): Smooth {
  const { width, height } = mask;
  const blurAt = (data: Float32Array, k: number) =>
    blur({ width, height, channels: 1, data }, SCALES_MM[k]! / mmPerPx).data;
  const inside = Float32Array.from(mask.data);
  const shares = SCALES_MM.map((_, k) => blurAt(inside, k));
  return ({ data }) => {
    const own = data.map((value, i) => value * inside[i]!);
    return shares.map((share, k) => {
      const sums = blurAt(own, k);
      for (let i = 0; i < sums.length; i++) sums[i]! /= Math.max(1e-3, share[i]!);
      return sums;
    });
  };
}

/** Standard deviations of the differences between blurs, over the mask. */
function bandSpreads(axis: Raster, mask: Mask, smooth: Smooth): number[] {
  const blurs = smooth(axis);
  return SCALES_MM.slice(1).map((_, k) => {
    const [fine, coarse] = [blurs[k]!, blurs[k + 1]!];
    let [sum, squares, count] = [0, 0, 0];
    for (let i = 0; i < mask.data.length; i++) {
      if (!mask.data[i]) continue;
      const value = fine[i]! - coarse[i]!;
      sum += value;
      squares += value * value;
      count++;
    }
    return Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2));
  });
}
