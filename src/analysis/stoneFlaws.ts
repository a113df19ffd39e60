import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { judgePatch } from '../measure/judgePatch';
import { pitSigns } from '../measure/pitSigns';
import { shrinkMask } from '../measure/shrinkMask';
import { surfaceRelief } from '../measure/surfaceRelief';
import { blackHat } from '../vision/blackHat';
import { distanceToEdge } from '../vision/distanceToEdge';
import { gaussianBlur } from '../vision/gaussianBlur';
import { labelComponents } from '../vision/labelComponents';
import type { OpenCv } from '../vision/openCv';
import type { FlawReport, PixelPoint } from './report';
import type { StoneCrop } from './stoneCrop';

/** Flaws are looked for at least this far inside the outline, mm: the rim is seen too slantwise to judge. */
const RIM_MM = 0.5;
/** Largest dark patch that is looked for, mm across its narrow side. */
const WIDEST_MM = 3.4;
/** Standard deviation of the local mean that is taken off as shading, mm. */
const SHADING_MM = 2.2;
/** A patch is this much darker than what surrounds it, ln units, or this many times the stone's usual detail. */
const DARK = { least: 0.13, timesUsual: 2.2 };
/** Smallest patch, mm across, and in pixels. */
const SMALLEST = { mm: 0.3, px: 4 };
/** Flaws below this confidence are not reported at all. */
const LEAST_CONFIDENCE = 0.2;

/** Flaws of one stone, and how much of its surface was looked at. */
export interface StoneFlaws {
  readonly flaws: readonly FlawReport[];
  readonly inspectedCm2: number;
}

/**
 * Finds pits, fractures and chips on one stone by classical image analysis.
 *
 * @param cv - OpenCV.
 * @param crop - The stone.
 * @param mmPerPx - Scale of the photo.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 */
export function stoneFlaws(
  cv: OpenCv,
  crop: StoneCrop,
  mmPerPx: number,
  lampSide: readonly [number, number],
): StoneFlaws {
  const mm = mmPerPx * crop.factor;
  const inner = shrinkMask(crop.mask, Math.max(1, Math.round(RIM_MM / mm)));
  const { detail, usual } = surfaceRelief(luminance(crop.stone), crop.mask, SHADING_MM / mm);
  const smooth = gaussianBlur(cv, detail, Math.max(0.5, 0.05 / mm));
  const patches = darkPatches(cv, smooth, inner, mm, usual);
  const depth = distanceToEdge(cv, crop.mask);
  const flaws = patches.flatMap((pixels): FlawReport[] => {
    const patch = pitSigns(smooth, pixels, lampSide);
    const rimMm = depth.data[Math.round(patch.row) * depth.width + Math.round(patch.column)]! * mm;
    const { kind, confidence, diameterMm, lengthMm } = judgePatch(patch, usual, mm, rimMm);
    if (confidence < LEAST_CONFIDENCE) return [];
    const [row, column]: PixelPoint = crop.toPhoto(patch.row, patch.column);
    return [{ kind, row, column, confidence, ...(kind === 'fracture' ? { lengthMm } : { diameterMm }) }];
  });
  return { flaws, inspectedCm2: surfaceMm2(inner, depth, mm) / 100 };
}

/** Connected dark patches of the surface. */
function darkPatches(cv: OpenCv, detail: Raster, inner: Mask, mm: number, usual: number): number[][] {
  const side = 2 * Math.round(WIDEST_MM / mm / 2) + 1;
  const hat = blackHat(cv, detail, side);
  const limit = Math.max(DARK.least, DARK.timesUsual * usual);
  const dark = inner.data.map((inside, i) => (inside && hat.data[i]! > limit ? 1 : 0));
  const { labels, components } = labelComponents(cv, {
    width: inner.width,
    height: inner.height,
    data: dark,
  });
  const pixels: number[][] = components.map(() => []);
  labels.forEach((label, i) => {
    if (label > 0) pixels[label - 1]!.push(i);
  });
  const leastPx = Math.max(SMALLEST.px, (Math.PI / 4) * (SMALLEST.mm / mm) ** 2);
  return pixels.filter((patch) => patch.length >= leastPx);
}

/** Surface under the inner mask with foreshortening undone, for a stone that curves like a ball at its rim. */
function surfaceMm2(inner: Mask, depth: Raster, mm: number): number {
  const radius = depth.data.reduce((most, deep) => Math.max(most, deep), 1);
  let area = 0;
  inner.data.forEach((inside, i) => {
    if (!inside) return;
    const fromMiddle = 1 - Math.min(1, depth.data[i]! / radius);
    area += 1 / Math.sqrt(Math.max(0.25, 1 - fromMiddle * fromMiddle));
  });
  return area * mm * mm;
}
