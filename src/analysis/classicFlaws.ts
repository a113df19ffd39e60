import type { Mask, Raster } from '../image/raster';
import { gaussianBlur } from '../kernels/gaussianBlur';
import { domeCosine } from '../measure/domeCosine';
import { judgeBowl } from '../measure/judgeBowl';
import { type StoneBowl, stoneBowls } from '../measure/stoneBowls';
import { type StoneFracture, stoneFractures } from '../measure/stoneFractures';
import { type Blur, type StoneSurface, stoneSurface } from '../measure/stoneSurface';
import { areaResize } from '../vision/areaResize';
import { distanceToEdge } from '../vision/distanceToEdge';
import type { OpenCv } from '../vision/openCv';
import type { FlawReport } from './report';
import type { StoneCrop } from './stoneCrop';
import type { StoneFlaws } from './stoneFlaws';

/** Flaws are looked for at this many pixels per millimeter, or at the photo's own scale where it has fewer. */
const PX_PER_MM = 10;
/** Flaws below this confidence are not reported. */
const LEAST_CONFIDENCE = 0.2;
/** From this diameter on a hole is a chip; near the rim already from the smaller one, mm. */
const CHIP_MM = { anywhere: 3.2, atRim: 1.6, rim: 1.2 };
/** A hole's center lies farther from a likelier flaw than the larger radius and this, mm. */
const APART_MM = 0.2;

/** A stone at the scale flaws are looked for at. */
interface Scaled {
  readonly color: Raster;
  readonly mask: Mask;
  readonly mmPerPx: number;
  /** Row and column in the crop. */
  readonly toCrop: (row: number, column: number) => readonly [number, number];
}

/**
 * Finds pits, fractures and chips on one stone by classical image analysis: what the network is measured against.
 *
 * @param cv - OpenCV.
 * @param crop - The stone.
 * @param mmPerPx - Scale of the photo.
 * @param lampSide - Unit vector in the picture toward the lamp: x right, y up.
 */
export function classicFlaws(
  cv: OpenCv,
  crop: StoneCrop,
  mmPerPx: number,
  lampSide: readonly [number, number],
): StoneFlaws {
  const { color, mask, mmPerPx: mm, toCrop } = scaled(cv, crop, mmPerPx * crop.factor);
  const blur: Blur = gaussianBlur;
  const surface = stoneSurface(color, mask, mm, lampSide, blur);
  const depth = distanceToEdge(cv, mask);
  const fractures = stoneFractures(surface, blur, LEAST_CONFIDENCE);
  const holes = holesApart(stoneBowls(surface, blur), fractures, mm);
  const place = (row: number, column: number) => {
    const [photoRow, photoColumn] = crop.toPhoto(...toCrop(row, column));
    return { row: photoRow, column: photoColumn };
  };
  const flaws = [
    ...fractures.map(({ line, signs, confidence }): FlawReport => {
      const middle = middleOf(line.pixels);
      return {
        kind: 'fracture',
        ...place(middle.row, middle.column),
        lengthMm: signs.lengthMm,
        path: line.pixels.map((pixel) => crop.toPhoto(...toCrop(pixel.row, pixel.column))),
        confidence,
      };
    }),
    ...holes.map(({ bowl: { fit }, confidence }): FlawReport => {
      const at = clamp(fit.row, depth.height) * depth.width + clamp(fit.column, depth.width);
      const diameterMm = 2 * fit.radiusPx * mm;
      const kind = isChip(diameterMm, depth.data[at]! * mm) ? 'chip' : 'pit';
      return { kind, ...place(fit.row, fit.column), diameterMm, confidence };
    }),
  ];
  return { flaws, inspectedCm2: surfaceMm2(surface, depth) / 100 };
}

const clamp = (at: number, size: number) => Math.min(size - 1, Math.max(0, at));

function isChip(diameterMm: number, rimMm: number): boolean {
  return diameterMm > CHIP_MM.anywhere || (diameterMm > CHIP_MM.atRim && rimMm < CHIP_MM.rim);
}

/** The crop at no more than the wanted pixels per millimeter. */
function scaled(cv: OpenCv, { stone, mask }: StoneCrop, mmPerPx: number): Scaled {
  const shrink = mmPerPx * PX_PER_MM;
  if (shrink >= 0.97) return { color: stone, mask, mmPerPx, toCrop: (row, column) => [row, column] };
  const width = Math.max(1, Math.round(stone.width * shrink));
  const height = Math.max(1, Math.round(stone.height * shrink));
  const soft = areaResize(cv, { ...mask, channels: 1, data: Float32Array.from(mask.data) }, width, height);
  const [down, across] = [stone.height / height, stone.width / width];
  return {
    color: areaResize(cv, stone, width, height),
    mask: { width, height, data: Uint8Array.from(soft.data, (share) => (share >= 0.5 ? 1 : 0)) },
    mmPerPx: mmPerPx * across,
    toCrop: (row, column) => [(row + 0.5) * down - 0.5, (column + 0.5) * across - 0.5],
  };
}

/** Bowls likely to be holes, the likeliest first, none over a likelier one nor on a fracture. */
function holesApart(bowls: readonly StoneBowl[], fractures: readonly StoneFracture[], mmPerPx: number) {
  const judged = bowls
    .map((bowl) => ({ bowl, confidence: judgeBowl(bowl, mmPerPx) }))
    .filter(({ confidence }) => confidence >= LEAST_CONFIDENCE)
    .sort((a, b) => b.confidence - a.confidence);
  const kept: typeof judged = [];
  for (const one of judged) {
    const { row, column, radiusPx } = one.bowl.fit;
    const near = (r: number, c: number, px: number) =>
      Math.hypot(r - row, c - column) < px + APART_MM / mmPerPx;
    if (kept.some(({ bowl: { fit } }) => near(fit.row, fit.column, Math.max(radiusPx, fit.radiusPx))))
      continue;
    const onFracture = fractures.some(
      ({ line, confidence }) =>
        confidence > one.confidence &&
        line.pixels.some((pixel) => near(pixel.row, pixel.column, 0.5 * radiusPx)),
    );
    if (!onFracture) kept.push(one);
  }
  return kept;
}

/** The pixel of a line that is nearest to its center of gravity. */
function middleOf<T extends { readonly row: number; readonly column: number }>(pixels: readonly T[]): T {
  const row = pixels.reduce((sum, pixel) => sum + pixel.row, 0) / pixels.length;
  const column = pixels.reduce((sum, pixel) => sum + pixel.column, 0) / pixels.length;
  const distance = (pixel: T) => Math.hypot(pixel.row - row, pixel.column - column);
  return pixels.reduce((best, pixel) => (distance(pixel) < distance(best) ? pixel : best));
}

/** Surface that was looked at with foreshortening undone. */
function surfaceMm2({ inner, mmPerPx }: StoneSurface, depth: Raster): number {
  const cosine = domeCosine(depth);
  let area = 0;
  inner.data.forEach((inside, i) => {
    if (inside) area += 1 / cosine(i);
  });
  return area * mmPerPx * mmPerPx;
}
