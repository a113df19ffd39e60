import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import { blurWide } from './blurWide';
import { type BrightPatch, brightPatches } from './brightPatches';
import { type GlintEdge, glintEdge } from './glintEdge';
import { highlightPlace } from './highlightPlace';
import type { HighlightLight } from './highlightScene';

/** Signs of water on one stone. */
export interface WaterGlints {
  /** A lamp's image as sharp as a mirror's but only as high as water makes it; null without one. */
  readonly film: BrightPatch | null;
  /** Small sharp glints, as drops make them. */
  readonly beads: readonly BrightPatch[];
  /** True when a highlight is higher than water can make it: there the stone itself shines. */
  readonly outshone: boolean;
}

/** Refractive indices of water (handbook value, from memory) and of most tumbled stones. */
const WATER_INDEX = 1.333;
const STONE_INDEX = 1.54;
/** Height of a film's highlight, in units of a water surface's. */
const FILM_HEIGHT = { least: 0.7, most: 1.25 };
/** A drop's glint is narrower than the camera's blur and so looks lower. */
const BEAD_HEIGHT = 0.4;
/** A highlight so much higher is the stone's own. */
const OUTSHINES = 1.55;
/** A spot stands out by this share of a water surface's highlight. */
const STANDS_OUT = 0.35;
/** Rise of a film's and a drop's edge, blur taken out, pixels; and share of that of a stone as rough as its highlight is low. */
const SHARP = { filmPx: 1.6, beadPx: 0.7, share: 0.6 };
/** A film's glint is at least this wide, a drop's at most, pixels. */
const RADIUS_PX = { film: 1.8, bead: 2.2 };
/** The lamp's white light: spread of the three channels of what stands out. */
const MOST_COLOR = 0.25;
/** Little that only scatters light is brighter: times a white sheet in the lamp's light. */
const TIMES_SHEET = 0.95;
/** Under a wide lamp water is dimmer than that; then a film must lie where the lamp's image is expected, radii of the stone, and drops must be several. */
const EXPECTED = { timesSheet: 0.5, radii: 0.4, beads: 3 };

/**
 * Looks for the lamp's image in water on a stone: a film or drops.
 *
 * Water mirrors F(1.333) = 0.020 of the lamp, a stone 0.045. A stone that is rough enough to lower its highlight
 * to water's has soft edges, α/a = √(F(stone) / F(seen) − 1) in lamp radii; a film's edges are sharp.
 *
 * @param stone - RGB crop in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone in the crop, its rim left out.
 * @param light - Lamp and camera.
 * @param sheet - Radiance of a white sheet that lies in the lamp's light.
 */
export function waterGlints(stone: Raster, mask: Mask, light: HighlightLight, sheet: number): WaterGlints {
  const radiance = luminance(stone);
  const water = light.lampRadiance * fresnelReflectance(WATER_INDEX, light.half[2]);
  const ratio =
    fresnelReflectance(STONE_INDEX, light.half[2]) / fresnelReflectance(WATER_INDEX, light.half[2]);
  const excess = aboveBody(radiance, mask, light.sourceSlope);
  const spots = brightPatches(excess, stone.width, () => STANDS_OUT * water)
    .filter(({ pixels }) => pixels.length >= 3)
    .map((patch) => ({ patch, edge: glintEdge(stone, radiance, mask, patch) }))
    .filter(({ edge }) => edge.color < MOST_COLOR && edge.body + edge.height > EXPECTED.timesSheet * sheet);
  const isBright = ({ body, height }: GlintEdge) => body + height > TIMES_SHEET * sheet;
  const expected = highlightPlace(mask, light.half);
  const isExpected = ({ row, column }: BrightPatch) =>
    Math.hypot(row - expected.row, column - expected.column) < EXPECTED.radii * expected.radiusPx;
  const isFilm = ({ height, risePx, radiusPx }: GlintEdge) => {
    const share = height / water;
    if (share < FILM_HEIGHT.least || share > FILM_HEIGHT.most || radiusPx < RADIUS_PX.film) return false;
    const lobe = Math.sqrt(Math.max(0, ratio / share - 1));
    return sharpened(risePx, light.blurPx) < Math.min(SHARP.filmPx, SHARP.share * lobe * radiusPx);
  };
  const isBead = ({ height, risePx, radiusPx }: GlintEdge) => {
    const isSmall = radiusPx <= RADIUS_PX.bead && sharpened(risePx, light.blurPx) < SHARP.beadPx;
    return isSmall && height > BEAD_HEIGHT * water && height < OUTSHINES * water;
  };
  const beads = spots.filter(({ edge }) => isBead(edge));
  const sure = beads.filter(({ edge }) => isBright(edge));
  return {
    film:
      spots.find(({ patch, edge }) => isFilm(edge) && (isBright(edge) || isExpected(patch)))?.patch ?? null,
    beads: (beads.length >= EXPECTED.beads ? beads : sure).map(({ patch }) => patch),
    outshone: spots.some(({ edge }) => edge.height > OUTSHINES * water && edge.radiusPx >= RADIUS_PX.film),
  };
}

/** Light above a wide mean over the stone; NaN outside. */
function aboveBody({ width, height, data }: Raster, mask: Mask, sourceSlope: number): Float32Array {
  const area = mask.data.reduce((sum, inside) => sum + inside, 0);
  const sigmaPx = Math.max(4, 4 * sourceSlope * Math.sqrt(area / Math.PI));
  const inside = Float32Array.from(data);
  for (let i = 0; i < inside.length; i++) inside[i]! *= mask.data[i]!;
  const sums = blurWide(inside, width, height, sigmaPx);
  const shares = blurWide(mask.data, width, height, sigmaPx);
  const excess = new Float32Array(data.length).fill(Number.NaN);
  for (let i = 0; i < excess.length; i++) {
    if (mask.data[i]) excess[i] = data[i]! - sums[i]! / Math.max(1e-6, shares[i]!);
  }
  return excess;
}

/** Rise of an edge with camera, pixel and slope taken over two pixels undone: a blurred step rises over σ √(2π). */
function sharpened(risePx: number, blurPx: number): number {
  const own = 2 * Math.PI * (blurPx ** 2 + 1 / 12 + 1 / 3);
  return Math.sqrt(Math.max(0, risePx ** 2 - own));
}
