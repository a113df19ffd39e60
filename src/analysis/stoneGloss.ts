import type { Mask } from '../image/raster';
import { bodyReflectance } from '../measure/bodyReflectance';
import { fitAgain } from '../measure/highlightFit';
import { highlightProfile } from '../measure/highlightProfile';
import { type HighlightLight, SEARCH_INDEX } from '../measure/highlightScene';
import { leastRoughness } from '../measure/leastRoughness';
import { type RoughnessEstimate, roughnessEstimate } from '../measure/roughnessEstimate';
import { shrinkMask } from '../measure/shrinkMask';
import { type StoneHighlight, stoneHighlight } from '../measure/stoneHighlight';
import { type StoneSkin, stoneSkin } from '../measure/stoneSkin';
import { type WholeStoneLobe, wholeStoneLobe } from '../measure/wholeStoneLobe';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import { glossUnits } from '../optics/glossUnits';
import type { FurtherHighlight, GlossBound, HighlightReport, RoughnessAtIndex } from './report';
import type { StoneCrop } from './stoneCrop';

/** Refractive indices at which the roughness is fitted; the grading interpolates between them. */
export const INDEX_KNOTS = [1.43, SEARCH_INDEX, 1.65, 1.77] as const;
/** The stone's rim, left out because the outline may be off by as much: share of the stone's radius. */
const RIM_SHARE = 0.05;
/** Lobes of this roughness and more, in half-vector radii of the lamp, can be confused with shading. */
const LIKE_SHADING = 3;
/** How much better than shading alone a lobe must explain the stone: to be believed, and to be found by that alone. */
const LEAST_GAIN = { believed: 2, found: 6 };
/** What the dome is wrong by on a real stone, in its middle and in addition at its rim, ln α (development and turned scenes). */
const DOME_SD = { middle: 0.2, rim: 0.35 };
/** Half of a 90 % interval of a normal distribution, standard deviations. */
const NORMAL_90 = 1.645;
/** An interval that reaches this far says no more than that the stone is matte. */
const ROUGHEST = 0.5;

/** An interval wider than this, 60° gloss units, is no number either. */
const WIDEST_GU60 = 70;
/** Refractive indices that most tumbled stones lie between, from quartz to jade and peridot (from memory). */
const USUAL_INDEX = { from: 1.5, to: 1.7 };

/** What a stone's light tells of its gloss: a number, or a bound when it cannot carry one. */
export interface StoneGloss {
  readonly highlight: HighlightReport | null;
  readonly bound: GlossBound | null;
  /** How even the skin is where it mirrors the lamp; null or left out when no highlight was fitted in a window. */
  readonly skin?: StoneSkin | null;
}

/** Reads the gloss of several stones at once, each as `stoneGloss` does. */
export interface GlossLanes {
  /** How many stones are worth handing over before the first is back. */
  readonly ahead: number;
  readonly read: (crop: StoneCrop, light: HighlightLight) => Promise<StoneGloss>;
}

/**
 * Measures the lamp's image on a stone for a range of refractive indices.
 *
 * @param crop - The stone.
 * @param light - Lamp and camera, in crop pixels.
 * @returns The highlight in photo pixels, or what its absence tells.
 */
export function stoneGloss(crop: StoneCrop, light: HighlightLight): StoneGloss {
  const mask = innerMask(crop);
  const found = stoneHighlight(crop.stone, mask, light);
  const near = found && windowReport(crop, light, found);
  const isSure = near !== null && near.byIndex[1]!.alpha < LIKE_SHADING * light.sourceSlope;
  const highlight = isSure ? near : wideReport(crop, mask, light, near);
  if (highlight && isNumber(highlight)) {
    return { highlight, bound: null, skin: found && highlight === near ? stoneSkin(found) : null };
  }
  return { highlight: null, bound: boundOf(crop, mask, light, highlight) };
}

/** Whether a highlight's interval says more than matte, or more than anything between matte and mirror. */
function isNumber({ byIndex }: HighlightReport): boolean {
  const spread = ({ alphaLow, alphaHigh, n }: RoughnessAtIndex) =>
    glossUnits(alphaLow, n, 60) - glossUnits(alphaHigh, n, 60);
  const usual = byIndex.filter(({ n }) => n >= USUAL_INDEX.from && n <= USUAL_INDEX.to);
  return byIndex[1]!.alphaHigh <= ROUGHEST && usual.every((knot) => spread(knot) <= WIDEST_GU60);
}

function innerMask(crop: StoneCrop): Mask {
  const area = crop.mask.data.reduce((sum, inside) => sum + inside, 0);
  return shrinkMask(crop.mask, Math.max(1, Math.round(RIM_SHARE * Math.sqrt(area / Math.PI))));
}

const polishOf = (light: HighlightLight, n: number) =>
  light.lampRadiance * fresnelReflectance(n, light.half[2]);

/** The highlight fitted in a window around it. */
function windowReport(crop: StoneCrop, light: HighlightLight, found: StoneHighlight): HighlightReport {
  const { fit, problem, further = [] } = found;
  const { window } = problem;
  const middle = Math.round(fit.shape.row) * window.width + Math.round(fit.shape.column);
  return {
    ...placeAndRoughness(crop, light, found),
    bodyReflectance: bodyReflectance(crop.stone, window, fit, light),
    levels: {
      height: fit.amplitude * fit.lobe.reduce((most, value) => Math.max(most, value), 0),
      body: Math.max(0, fit.body[middle] ?? 0),
    },
    ...(further.length > 0 ? { further: further.map((one) => placeAndRoughness(crop, light, one)) } : {}),
    profile: highlightProfile(window, problem.optics, fit),
  };
}

function placeAndRoughness(crop: StoneCrop, light: HighlightLight, found: StoneHighlight): FurtherHighlight {
  const { window } = found.problem;
  const { shape } = found.fit;
  const [row, column] = crop.toPhoto(
    window.row + shape.row * window.stepPx,
    window.column + shape.column * window.stepPx,
  );
  const byIndex = INDEX_KNOTS.map((n): RoughnessAtIndex => {
    const { alpha, low, high } = roughnessAt(found, light, n);
    return { n, alpha, alphaLow: low, alphaHigh: high };
  });
  return { row, column, byIndex };
}

/** A lobe so wide that it takes the whole stone to tell it from shading; null when it cannot be told. */
function wideReport(
  crop: StoneCrop,
  mask: Mask,
  light: HighlightLight,
  near: HighlightReport | null,
): HighlightReport | null {
  const whole = wholeStoneLobe(crop.stone, mask, light, polishOf(light, SEARCH_INDEX));
  const believed = near && !(whole && whole.gain < LEAST_GAIN.believed) ? near : null;
  if (!whole || whole.gain < LEAST_GAIN.found) return believed;
  const found = wholeReport(crop, light, whole);
  return believed && spreadOf(believed) < spreadOf(found) ? believed : found;
}

/** Width of the interval, ln α. */
function spreadOf({ byIndex }: HighlightReport): number {
  const { alphaLow, alphaHigh } = byIndex[1]!;
  return Math.log(alphaHigh / alphaLow);
}

function wholeReport(crop: StoneCrop, light: HighlightLight, whole: WholeStoneLobe): HighlightReport {
  const domeSd = DOME_SD.middle + DOME_SD.rim * Math.min(1, whole.offCenter) ** 2;
  const widen = (end: number) => Math.hypot(Math.log(end / whole.alpha), NORMAL_90 * domeSd);
  // A lobe much wider than the lamp is F · a² / α² high.
  const byIndex = INDEX_KNOTS.map((n): RoughnessAtIndex => {
    const alpha = whole.alpha * Math.sqrt(polishOf(light, n) / polishOf(light, SEARCH_INDEX));
    const [low, high] = [widen(whole.low), widen(whole.high)];
    return { n, alpha, alphaLow: alpha * Math.exp(-low), alphaHigh: alpha * Math.exp(high) };
  });
  const [row, column] = crop.toPhoto(whole.row, whole.column);
  return { row, column, byIndex, bodyReflectance: null, levels: whole.levels, profile: whole.profile };
}

function boundOf(
  crop: StoneCrop,
  mask: Mask,
  light: HighlightLight,
  doubtful: HighlightReport | null,
): GlossBound {
  const least = leastRoughness(crop.stone, mask, light.sourceSlope);
  const byIndex = INDEX_KNOTS.map((n, k) => {
    const alpha = least(polishOf(light, n));
    return { n, alphaAtLeast: Math.max(alpha, doubtful?.byIndex[k]?.alphaLow ?? 0) };
  });
  return { byIndex };
}

/** Roughness when a perfect polish mirrors as much as that index does. */
function roughnessAt({ fit, problem }: StoneHighlight, light: HighlightLight, n: number): RoughnessEstimate {
  if (n === SEARCH_INDEX) return roughnessEstimate(problem, fit);
  const other = { ...problem, prior: { ...problem.prior, amplitude: polishOf(light, n) } };
  return roughnessEstimate(other, fitAgain(other, fit));
}
