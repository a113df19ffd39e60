import { nthSmallest } from '../image/nthSmallest';
import type { Mask, Raster } from '../image/raster';
import { blurGaussian } from './blurGaussian';

/** A spot brighter than its surroundings that may be the lamp's image. */
export interface HighlightCandidate {
  readonly row: number;
  readonly column: number;
  /** Rough half-width of the spot, pixels. */
  readonly radiusPx: number;
  /** Mean radiance of the middle over the surroundings. */
  readonly contrast: number;
  /** Radiance at the middle. */
  readonly peak: number;
}

/** A stone's finest level has at most so many pixels across: a spot of two of them is a speck, and most of the time. */
const FINEST_PX = 320;
/** Spots kept per size, and in all. */
const KEPT_PER_LEVEL = 2;
const KEPT = 6;
/** Sizes of the inner and outer Gaussian at each level, level pixels. */
const INNER_SIGMA = 1.2;
const OUTER_SIGMA = 3;

/**
 * Finds bright spots of every size on a stone, from a hundredth to a third of the stone.
 *
 * Each level of a pyramid is searched for maxima of the difference of two Gaussians, both taken over
 * the stone only, so the stone's edge makes no spot.
 *
 * @param light - One-channel radiance.
 * @param mask - The stone, a pixel or two inside its outline.
 * @returns Up to six spots, highest contrast over its level's usual contrast first.
 */
export function highlightCandidates(light: Raster, mask: Mask): HighlightCandidate[] {
  const found: (HighlightCandidate & { readonly strength: number })[] = [];
  let level: Level = {
    values: Float64Array.from(light.data),
    inside: Float64Array.from(mask.data),
    ...sizeOf(light),
  };
  for (let step = 1; Math.min(level.width, level.height) >= 12; step *= 2) {
    if (Math.min(level.width, level.height) <= FINEST_PX) found.push(...maxima(level, step));
    level = halve(level);
  }
  found.sort((a, b) => b.strength - a.strength);
  const kept: HighlightCandidate[] = [];
  for (const spot of found) {
    const same = kept.some((k) => {
      const apart = Math.hypot(k.row - spot.row, k.column - spot.column);
      return (
        apart < 0.7 * Math.max(k.radiusPx, spot.radiusPx) &&
        Math.abs(Math.log(k.radiusPx / spot.radiusPx)) < 0.8
      );
    });
    if (!same && kept.length < KEPT) kept.push(spot);
  }
  return kept;
}

interface Level {
  readonly width: number;
  readonly height: number;
  readonly values: Float64Array;
  /** Share of each pixel that is stone. */
  readonly inside: Float64Array;
}

const sizeOf = (raster: Raster) => ({ width: raster.width, height: raster.height });

function maxima(level: Level, step: number) {
  const inner = smoothInside(level, INNER_SIGMA);
  const contrast = smoothInside(level, OUTER_SIGMA);
  const sizes = new Float64Array(contrast.length);
  let count = 0;
  for (let i = 0; i < contrast.length; i++) {
    contrast[i] = level.inside[i]! > 0.99 ? inner[i]! - contrast[i]! : Number.NaN;
    if (level.inside[i]! > 0.99) sizes[count++] = Math.abs(contrast[i]!);
  }
  const usual = median(sizes.subarray(0, count)) + 1e-4;
  const spots = [];
  for (let y = 1; y < level.height - 1; y++) {
    for (let x = 1; x < level.width - 1; x++) {
      const i = y * level.width + x;
      const c = contrast[i]!;
      if (!(c > 0) || !isPeak(contrast, i, level.width)) continue;
      const place = (at: number) => (at + 0.5) * step - 0.5;
      const strength = c / usual;
      spots.push({
        row: place(y),
        column: place(x),
        radiusPx: 2 * step,
        contrast: c,
        peak: inner[i]!,
        strength,
      });
    }
  }
  return spots.sort((a, b) => b.strength - a.strength).slice(0, KEPT_PER_LEVEL);
}

function isPeak(values: Float64Array, i: number, width: number): boolean {
  const most = values[i]!;
  for (let above = i - width; above <= i + width; above += width) {
    if (values[above - 1]! > most || values[above]! > most || values[above + 1]! > most) return false;
  }
  return true;
}

/** Gaussian mean over the stone only. */
function smoothInside({ width, height, values, inside }: Level, sigma: number): Float64Array {
  const sums = Float64Array.from(values);
  for (let i = 0; i < sums.length; i++) sums[i]! *= inside[i]!;
  const shares = Float64Array.from(inside);
  blurGaussian(sums, width, height, sigma);
  blurGaussian(shares, width, height, sigma);
  for (let i = 0; i < sums.length; i++) sums[i]! /= Math.max(1e-6, shares[i]!);
  return sums;
}

function halve(level: Level): Level {
  const width = level.width >> 1;
  const height = level.height >> 1;
  const values = new Float64Array(width * height);
  const inside = new Float64Array(width * height);
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      const corner = 2 * y * level.width + 2 * x;
      for (const j of [corner, corner + 1, corner + level.width, corner + level.width + 1]) {
        values[i]! += level.inside[j]! * level.values[j]!;
        inside[i]! += level.inside[j]! / 4;
      }
      values[i]! /= 4 * Math.max(1e-6, inside[i]!);
    }
  }
  return { width, height, values, inside };
}

function median(values: Float64Array): number {
  return nthSmallest(values, values.length >> 1) ?? 0;
}
