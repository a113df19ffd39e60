import type { Mask, Raster } from '../image/raster';
import { colorPatches } from './colorPatches';
import type { HighlightProfile } from './highlightProfile';
import { ringMeans } from './ringMeans';
import { type ShadingFit, type ShadingProblem, shadingFit, USUAL_SHADING } from './shadingFit';
import { independentSamples, type StoneSamples, stoneSamples } from './stoneSamples';
import type { ShadingLight } from './stoneShading';

/** What the light of a whole stone says about its roughness. */
export interface WholeStoneLobe {
  /** Likeliest roughness and its 90 % interval, inside the ladder's 0.045 to 0.86. */
  readonly alpha: number;
  readonly low: number;
  readonly high: number;
  /** How much better a stone with a lobe explains its light than one without, as a difference of −2 ln likelihood. */
  readonly gain: number;
  /** Where the lobe's middle lies, crop pixels. */
  readonly row: number;
  readonly column: number;
  /** Its distance from the silhouette's middle, 0 to about 1 at the rim. */
  readonly offCenter: number;
  /** Light of the lobe at its highest, and of the stone under it. */
  readonly levels: { readonly height: number; readonly body: number };
  readonly profile: HighlightProfile;
}

/** Roughnesses tried, and their spacing in ln α. */
const SPACING = Math.log(1.235);
const LADDER = Array.from({ length: 15 }, (_, i) => 0.045 * Math.exp(i * SPACING));
/** Rungs of the ladder that only bound it. */
const SHARPEST_RUNG = 2;
const TRIALS = [0.08, 0.2, 0.6];
const FEWEST_SAMPLES = 60;
/** Cost that a roughness may exceed the best by: 90 % of χ² with one degree of freedom. */
const COST_RISE = 2.706;

/**
 * Reads a wide lobe off the light of the whole stone: shape, body and lobe are fitted together for each of a
 * ladder of roughnesses.
 *
 * A lobe as wide as the stone cannot be told from shading in a window around it; but shading follows the cosine
 * to the lamp and has the stone's own color, and the stone's shape is bounded by its silhouette.
 *
 * @param stone - RGB crop in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone, its rim left out.
 * @param light - Lamp and half vector.
 * @param amplitude - Radiance of a perfect polish.
 * @returns null when too little of the stone is seen, or its light fits no lobe wider than the grid.
 */
export function wholeStoneLobe(
  stone: Raster,
  mask: Mask,
  light: ShadingLight,
  amplitude: number,
): WholeStoneLobe | null {
  const samples = stoneSamples(stone, mask);
  if (samples.x.length < FEWEST_SAMPLES) return null;
  const plain = { samples, light, amplitude, alpha: 0.3, independentShare: 0.05 };
  const trials = (patches: Uint8Array) =>
    TRIALS.map((alpha) => shadingFit({ ...plain, patches, alpha }, USUAL_SHADING));
  const oneColor = cheapest(trials(new Uint8Array(samples.x.length)));
  const patches = colorPatches(samples.light, oneColor.shading.body);
  const rough = cheapest(trials(patches));
  const independentShare = independentSamples(samples, rough.whitened);
  const problem: ShadingProblem = { ...plain, patches, independentShare };
  const up = sweep(problem, LADDER);
  const down = sweep(problem, [...LADDER].reverse()).reverse();
  const fits = up.map((fit, k) => cheapest([fit, down[k]!]));
  const best = cheapest(fits);
  // So sharp a lobe stands out by itself; here it is a shape that hides it between the samples.
  if (fits.indexOf(best) < SHARPEST_RUNG) return null;
  const bare = { ...problem, amplitude: 0 };
  const without = cheapest([shadingFit(bare, USUAL_SHADING), shadingFit(bare, best.parameters)]);
  return {
    ...roughness(fits.map((fit) => fit.cost)),
    gain: without.cost - best.cost,
    ...lobeMiddle(samples, best),
    levels: levelsOf(best, patches),
    profile: profileOf(samples, patches, best),
  };
}

const cheapest = (fits: readonly ShadingFit[]) => fits.reduce((a, b) => (b.cost < a.cost ? b : a));

/** Goes along a ladder, each fit beginning where the last one ended. */
function sweep(problem: ShadingProblem, ladder: readonly number[]): ShadingFit[] {
  const fits: ShadingFit[] = [];
  for (const alpha of ladder) {
    fits.push(shadingFit({ ...problem, alpha }, fits.at(-1)?.parameters ?? USUAL_SHADING));
  }
  return fits;
}

/** Lowest point of the parabola through the best three costs, and where the cost has risen to the 90 % level. */
function roughness(costs: readonly number[]): { alpha: number; low: number; high: number } {
  const least = Math.min(...costs);
  const k = costs.indexOf(least);
  const [before, after] = [costs[k - 1], costs[k + 1]];
  const bend = before === undefined || after === undefined ? 0 : before - 2 * least + after;
  const shift = bend > 0 ? (0.5 * (before! - after!)) / bend : 0;
  const at = (place: number) => LADDER[0]! * Math.exp(place * SPACING);
  const end = (direction: 1 | -1) => {
    for (let i = k; i + direction >= 0 && i + direction < costs.length; i += direction) {
      const [inside, outside] = [costs[i]! - least, costs[i + direction]! - least];
      if (outside > COST_RISE) return at(i + (direction * (COST_RISE - inside)) / (outside - inside));
    }
    return at(direction > 0 ? costs.length - 1 : 0);
  };
  const alpha = at(k + shift);
  return { alpha, low: Math.min(alpha, end(-1)), high: Math.max(alpha, end(1)) };
}

function lobeMiddle({ x, y, silhouette }: StoneSamples, { shading }: ShadingFit) {
  let nearest = 0;
  shading.apart.forEach((apart, i) => {
    const best = shading.apart[nearest]!;
    if (apart < best || Number.isNaN(best)) nearest = i;
  });
  const [right, up] = [x[nearest]!, y[nearest]!];
  const [xx, xy, yy] = silhouette.inverse;
  return {
    row: silhouette.row - up,
    column: silhouette.column + right,
    offCenter: Math.sqrt(xx * right * right + 2 * xy * right * up + yy * up * up),
  };
}

function levelsOf({ shading: { lobe, body }, albedo, amplitude }: ShadingFit, patches: Uint8Array) {
  let highest = 0;
  lobe.forEach((value, i) => {
    if (value > lobe[highest]!) highest = i;
  });
  const own = albedo.subarray(3 * patches[highest]!, 3 * patches[highest]! + 3);
  const gray = own.reduce((sum, part) => sum + part / 3, 0);
  return { height: amplitude * lobe[highest]!, body: gray * body[highest]! };
}

function profileOf(
  { light }: StoneSamples,
  patches: Uint8Array,
  { shading, albedo, amplitude }: ShadingFit,
): HighlightProfile {
  const rings = [...shading.apart].flatMap((apart, i) => {
    if (Number.isNaN(apart)) return [];
    let left = 0;
    for (let c = 0; c < 3; c++)
      left += (light[3 * i + c]! - albedo[3 * patches[i]! + c]! * shading.body[i]!) / 3;
    return [{ distance: apart, measured: left / amplitude, model: shading.lobe[i]! }];
  });
  return ringMeans(rings);
}
