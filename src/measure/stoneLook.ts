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
  const bands = axes.map((axis) => bandSpreads(axis, use, mmPerPx, blur));
  return {
    colors: axes.flatMap((axis) => quantiles(axis, use)),
    pattern: bands.flat().map((spread) => Math.log(spread + LEAST_SPREAD)),
    ...form,
  };
}

/** L*, a* and b* as pictures. */
function labAxes({ width, height, data }: Raster, white: number): [Raster, Raster, Raster] {
  const axes = [0, 1, 2].map(() => new Float32Array(width * height));
  for (let i = 0; i < width * height; i++) {
    const at = (k: number) => Math.max(0, data[3 * i + k]!) / white;
    const lab = cielab([at(0), at(1), at(2)]);
    for (let k = 0; k < 3; k++) axes[k]![i] = lab[k]!;
  }
  return axes.map((axis): Raster => ({ width, height, channels: 1, data: axis })) as [Raster, Raster, Raster];
}

function quantiles({ data }: Raster, mask: Mask): number[] {
  const values = data.filter((_, i) => mask.data[i] === 1).sort();
  return QUANTILES.map((share) => values[Math.floor(share * (values.length - 1))] ?? 0);
}

/** Standard deviations of the differences between blurs, over the mask. */
function bandSpreads(axis: Raster, mask: Mask, mmPerPx: number, blur: Blur): number[] {
  const weights = (sigmaPx: number) => blur({ ...axis, data: Float32Array.from(mask.data) }, sigmaPx).data;
  const masked = { ...axis, data: axis.data.map((value, i) => value * mask.data[i]!) };
  const blurs = SCALES_MM.map((mm) => {
    const sums = blur(masked, mm / mmPerPx).data;
    const shares = weights(mm / mmPerPx);
    return sums.map((sum, i) => sum / Math.max(1e-3, shares[i]!));
  });
  return SCALES_MM.slice(1).map((_, k) => {
    let [sum, squares, count] = [0, 0, 0];
    mask.data.forEach((inside, i) => {
      if (!inside) return;
      const value = blurs[k]![i]! - blurs[k + 1]![i]!;
      sum += value;
      squares += value * value;
      count++;
    });
    return Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2));
  });
}
