import { cropReduced } from '../image/cropReduced';
import { luminance } from '../image/luminance';
import type { Photo, Placing } from '../image/photo';
import type { Box } from '../image/raster';
import { type ShrunkPhoto, shrinkPhoto } from '../image/shrinkPhoto';
import { fitPlacing, type PlacedPatch } from '../measure/fitPlacing';
import { type LightSlopes, lightSlopes } from '../measure/lightSlopes';
import { patchShift } from '../measure/patchShift';
import { pictureShift } from '../measure/pictureShift';
import { texturedPlaces } from '../measure/texturedPlaces';

/** Longer sides of the pictures in which the shift is sought, pixels: first roughly, then closely. */
const SIDES_PX = [225, 900] as const;
/** A camera that moved farther than this was not held still, pixels of the larger of them. */
const REACH_PX = 12;
/** Slopes of two shots of one scene correlate at least so much. */
const LEAST_LIKENESS = 0.25;
/** Patches compared at full size: their side, and how far off the rough shift may be, pixels. */
const PATCH_PX = 64;
const MARGIN_PX = 6;
const FEWEST_PATCHES = 3;
/** Where stones were moved between the shots, their patches disagree. */
const LEAST_AGREEING = 0.7;

/** How a shot lies on the photo at hand, and the signs by which it shows the same scene. */
export interface PlacedShot {
  readonly placing: Placing;
  /** Correlation of the slopes of both, −1 to 1. */
  readonly likeness: number;
  /** Share of the patches that agree on the placing, 0 to 1. */
  readonly agreeing: number;
  readonly isSameScene: boolean;
}

/**
 * Finds how one shot of a scene lies on another of the same size, to a fraction of a pixel.
 *
 * @param base - The photo at hand.
 * @param other - Another shot, at whatever exposure.
 */
export function placeShot(base: Photo, other: Photo): PlacedShot {
  const rough = roughShift(base, other);
  const strange = { placing: { ...rough, turn: 0, grow: 0 }, likeness: rough.likeness, agreeing: 0 };
  if (rough.likeness < LEAST_LIKENESS) return { ...strange, isSameScene: false };
  const patches = patchesOf(base, other, rough);
  if (patches.length < FEWEST_PATCHES) return { ...strange, isSameScene: false };
  const { placing, agreeing } = fitPlacing(patches);
  return { placing, likeness: rough.likeness, agreeing, isSameScene: agreeing >= LEAST_AGREEING };
}

interface RoughShift {
  /** Photo pixels. */
  readonly down: number;
  readonly right: number;
  readonly likeness: number;
  readonly factor: number;
  readonly slopes: LightSlopes;
}

function roughShift(base: Photo, other: Photo): RoughShift {
  const slopesOf = ({ raster }: ShrunkPhoto) => lightSlopes(raster);
  const [tiny, small] = SIDES_PX.map((side) => ({ a: shrinkPhoto(base, side), b: shrinkPhoto(other, side) }));
  const times = tiny!.a.factor / small!.a.factor;
  const still = { down: 0, right: 0 };
  const reach = Math.ceil(REACH_PX / times);
  const first = pictureShift(slopesOf(tiny!.a), slopesOf(tiny!.b), still, reach);
  const about = { down: Math.round(first.down * times), right: Math.round(first.right * times) };
  const slopes = slopesOf(small!.a);
  const found = pictureShift(slopes, slopesOf(small!.b), about, Math.ceil(times / 2) + 1);
  const { factor } = small!.a;
  return { down: found.down * factor, right: found.right * factor, likeness: found.likeness, factor, slopes };
}

/** Shifts of textured patches at full size. */
function patchesOf(base: Photo, other: Photo, rough: RoughShift): PlacedPatch[] {
  const reductions = rough.factor > 1 ? [Math.min(4, rough.factor), 1] : [1];
  const side = Math.max(8, Math.round(PATCH_PX / rough.factor));
  return texturedPlaces(rough.slopes, side).flatMap((place): PlacedPatch[] => {
    const row = Math.round((place.row + 0.5) * rough.factor);
    const column = Math.round((place.column + 0.5) * rough.factor);
    let shift: { down: number; right: number } | null = { down: rough.down, right: rough.right };
    for (const by of reductions) shift = shift && refine(base, other, row, column, shift, by);
    if (!shift) return [];
    const middle = { row: (base.heightPx - 1) / 2, column: (base.widthPx - 1) / 2 };
    return [{ row: row - 0.5 - middle.row, column: column - 0.5 - middle.column, ...shift }];
  });
}

/** The shift at one place, looked for in both shots reduced by a factor; null where nothing fixes it. */
function refine(
  base: Photo,
  other: Photo,
  row: number,
  column: number,
  about: { readonly down: number; readonly right: number },
  by: number,
): { down: number; right: number } | null {
  const half = (PATCH_PX / 2) * by;
  const margin = MARGIN_PX * by;
  const whole = { down: Math.round(about.down), right: Math.round(about.right) };
  const here = { row: row - half, column: column - half, width: 2 * half, height: 2 * half };
  const there = {
    row: here.row + whole.down - margin,
    column: here.column + whole.right - margin,
    width: 2 * (half + margin),
    height: 2 * (half + margin),
  };
  if (!isInside(here, base) || !isInside(there, other)) return null;
  const light = (photo: Photo, box: Box) => luminance(cropReduced(photo, box, by));
  const found = patchShift(light(base, here), light(other, there), MARGIN_PX);
  return found && { down: whole.down + found.down * by, right: whole.right + found.right * by };
}

function isInside({ row, column, width, height }: Box, { widthPx, heightPx }: Photo): boolean {
  return row >= 0 && column >= 0 && row + height <= heightPx && column + width <= widthPx;
}
