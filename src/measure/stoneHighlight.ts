import type { Mask, Raster } from '../image/raster';
import { behavesLikeLamp } from './behavesLikeLamp';
import { type HighlightCandidate, highlightCandidates } from './highlightCandidates';
import { type FitEffort, type HighlightFit, type HighlightProblem, highlightFit } from './highlightFit';
import { EVEN_CURVATURE, type HighlightWindow, type LobeShape } from './highlightModel';
import {
  type HighlightLight,
  type HighlightScene,
  heightShare,
  highlightScene,
  mixFor,
} from './highlightScene';
import { highlightWindow } from './highlightWindow';
import { lobeHalfWidth } from './lobeHalfWidth';
import { lobeMisfit } from './lobeMisfit';
import { looksLikeSpeck } from './looksLikeSpeck';

/** The best highlight of a stone under one assumed refractive index. */
export interface StoneHighlight {
  readonly problem: HighlightProblem;
  readonly fit: HighlightFit;
  /** Further images of the lamp on the same stone, such as on other facets; left out when there are none. */
  readonly further?: readonly StoneHighlight[];
}

/** Curvature expected of a stone with silhouette radius 1: flatter than a ball, facets flatter still. */
export const CURVATURE_PRIOR = { mean: Math.log(0.75), sd: 0.7 };
/** A lobe as wide as the stone is bent by the stone's mean curvature, which its silhouette tells much better. */
const WHOLE_STONE_CURVATURE_SD = 0.05;
/** Spread of the mirror radiance's logarithm from ball to stone: exposure noise, lamp falloff, ball's index. */
const AMPLITUDE_SD = 0.025;
/** How far from the expected place a highlight may lie, standard deviation in radii of the stone. */
const PLACE_SD = 0.4;
const QUICK: FitEffort = { rounds: 2, iterations: 6, unevenCurvature: false };
const THOROUGH: FitEffort = { rounds: 3, iterations: 14, unevenCurvature: false };
/** Near-mirrors show the curvature's change in the outline of the lamp's image. */
const NEAR_MIRROR: FitEffort = { ...THOROUGH, unevenCurvature: true };
const NEAR_MIRROR_SHARE = 0.5;
/** Candidates fitted thoroughly. */
const FINALISTS = 3;
/** A spot of such contrast, share of a perfect polish, is tried as a mirror too; that roughness, lamp radii. */
const BRIGHT_SPOT = { from: 0.3, to: 0.9 };
const MIRROR_GUESS = 0.2;
/** Spots of one size this near to each other, pixels, and of so nearly the same contrast, ln, begin the same fit. */
const TWIN = { apartPx: 1, lnContrast: 0.4 };
/** Quick fits that end this near to each other found the same spot. */
const SAME_PLACE_PX = 3;
/** A quick fit is coarse: one that does not behave like the lamp's image yet still has so much of a chance. */
const SECOND_CHANCE = 0.25;
/**
 * A further image of the lamp has at least so much of the best one's evidence, such a height as a share of a perfect
 * polish, and leaves over less than that share of itself: on the development scenes those held the truth.
 */
const FURTHER = { evidence: 0.1, share: 0.3, misfit: 0.3 };
const FEWEST_PIXELS = 40;
/** A lobe that rises over so many pixels is sampled once or twice along a pixel, and is within a thousandth of its height. */
const SMOOTH_PX = { once: 6, twice: 3 };

/**
 * Finds and fits the lamp's image on one stone.
 *
 * @param stone - RGB crop in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone in the crop, its rim left out.
 * @param light - Lamp and camera.
 * @returns The highlight that explains most, or null when nothing on the stone behaves like one.
 */
export function stoneHighlight(stone: Raster, mask: Mask, light: HighlightLight): StoneHighlight | null {
  const scene = highlightScene(stone, mask, light);
  const [ofFirst, ofLast] = [0, scene.mixes.length - 1].map((mix) =>
    highlightCandidates(scene.mixes[mix]!.radiance, mask),
  ) as [HighlightCandidate[], HighlightCandidate[]];
  const spots = [...ofFirst, ...ofLast.filter((spot) => !ofFirst.some((other) => areTwins(spot, other)))];
  const candidates = [...spots, ...wideCandidates(scene)];
  const quick = candidates
    .flatMap((candidate) => firstGuesses(scene, candidate).map((guess) => ({ candidate, guess })))
    .map(({ candidate, guess }) => fitFrom(scene, guess, candidate, QUICK, 1))
    .filter((found) => found !== null)
    .map((found) => ({ found, promise: promise(scene, found) }))
    .sort((a, b) => b.promise - a.promise);
  const finals = apart(quick.map(({ found }) => found))
    .slice(0, FINALISTS)
    .map(({ problem, fit }) => {
      const effort = heightShare(scene, fit.shape) > NEAR_MIRROR_SHARE ? NEAR_MIRROR : THOROUGH;
      return fitFrom(scene, fit.shape, placeInCrop(problem.window, fit.shape), effort, 2);
    })
    .filter((found) => found !== null)
    .filter((found) => behaves(scene, found) && !looksLikeSpeck(found) && evidence(scene, found) > 0)
    .sort((a, b) => evidence(scene, b) - evidence(scene, a));
  const best = finals[0];
  if (!best) return null;
  // Several fits of one highlight: the one that leaves least over.
  const same = finals.filter((other) => apartPx(best, other) < lobeWidthPx(scene, best));
  const chosen = same.reduce((a, b) => (lobeMisfit(b) < lobeMisfit(a) ? b : a));
  const further = furtherOf(scene, best, finals);
  return further.length > 0 ? { ...chosen, further } : chosen;
}

/** Those beside the best that stand apart from it and from each other and are good enough to be read. */
function furtherOf(scene: HighlightScene, best: StoneHighlight, finals: readonly StoneHighlight[]) {
  return finals.filter((one, k) => {
    const isApart = finals
      .slice(0, k)
      .every((other) => apartPx(one, other) >= lobeWidthPx(scene, one) + lobeWidthPx(scene, other));
    const isStrong = evidence(scene, one) > FURTHER.evidence * evidence(scene, best);
    const isHigh = heightShare(scene, one.fit.shape) > FURTHER.share;
    return k > 0 && isApart && isStrong && isHigh && lobeMisfit(one) < FURTHER.misfit;
  });
}

const placeOf = ({ problem, fit }: StoneHighlight) => placeInCrop(problem.window, fit.shape);

function apartPx(a: StoneHighlight, b: StoneHighlight): number {
  const [here, there] = [placeOf(a), placeOf(b)];
  return Math.hypot(here.row - there.row, here.column - there.column);
}

const lobeWidthPx = ({ light }: HighlightScene, { fit: { shape } }: StoneHighlight) =>
  lobeHalfWidth(shape.alpha, light.sourceSlope) / Math.exp(shape.mean);

/** The first of each place: a highlight is found by several candidates, and once is enough. */
function apart(found: readonly StoneHighlight[]): StoneHighlight[] {
  const kept: StoneHighlight[] = [];
  for (const one of found) {
    if (!kept.some((other) => apartPx(one, other) < SAME_PLACE_PX)) kept.push(one);
  }
  return kept;
}

/** Whether two spots are one, found in two mixes of the colors: fits from both end at the same place. */
function areTwins(a: HighlightCandidate, b: HighlightCandidate): boolean {
  const apart = Math.hypot(a.row - b.row, a.column - b.column);
  const contrast = Math.abs(Math.log(a.contrast / b.contrast));
  return apart < TWIN.apartPx && a.radiusPx === b.radiusPx && contrast < TWIN.lnContrast;
}

/** Broad lobes at the expected place, which leave no spot that stands out of the pattern. */
function wideCandidates({ expected, amplitude }: HighlightScene): HighlightCandidate[] {
  return [0.25, 0.4].map((share) => ({
    row: expected.row,
    column: expected.column,
    radiusPx: share * expected.radiusPx,
    contrast: 0.01 * amplitude,
    peak: 0,
  }));
}

/** What the spot's contrast says, and for a bright spot a mirror that a pale body makes look lower. */
function firstGuesses(scene: HighlightScene, candidate: HighlightCandidate): LobeShape[] {
  const a = scene.light.sourceSlope;
  const share = Math.min(0.95, Math.max(0.004, (2.2 * candidate.contrast) / scene.amplitude));
  const byContrast = Math.min(0.45, Math.max(0.006, a * Math.sqrt(1 / share - 1)));
  const isBright = share > BRIGHT_SPOT.from && share < BRIGHT_SPOT.to;
  return [byContrast, ...(isBright ? [MIRROR_GUESS * a] : [])].map((alpha) => {
    const mean = Math.log(lobeHalfWidth(alpha, a) / candidate.radiusPx);
    return { row: 0, column: 0, mean, stretch: 0, skew: 0, alpha, change: EVEN_CURVATURE };
  });
}

interface Place {
  readonly row: number;
  readonly column: number;
}

/** Fits in a window that suits the start, then again in one that suits what was found. */
function fitFrom(
  scene: HighlightScene,
  start: LobeShape,
  at: Place,
  effort: FitEffort,
  passes: number,
): StoneHighlight | null {
  let shape = start;
  let center = at;
  let found: StoneHighlight | null = null;
  for (let pass = 0; pass < passes; pass++) {
    const reach = windowReach(scene, shape);
    const mix = mixFor(scene, shape);
    const window = highlightWindow(mix.radiance, scene.mask, scene.clipped, center, reach);
    if (window.use.filter((use) => use > 0).length < FEWEST_PIXELS) return found;
    const prior = {
      amplitude: scene.amplitude,
      amplitudeSd: AMPLITUDE_SD,
      curvatureMean: CURVATURE_PRIOR.mean - Math.log(scene.expected.radiusPx),
      curvatureSd: curvatureSd(reach / scene.expected.radiusPx),
      leastBody: mix.leastBody,
    };
    const problem: HighlightProblem = {
      window,
      optics: opticsFor(window, shape, scene.light, effort),
      prior,
    };
    const fit = highlightFit(problem, { ...shape, ...placeInWindow(window, center) }, effort);
    if (!isInside(window, fit.shape)) return null;
    found = { problem, fit };
    shape = fit.shape;
    center = placeInCrop(window, shape);
    if (Math.abs(Math.log(windowReach(scene, shape) / reach)) < 0.25) break;
  }
  return found;
}

/** Spread of the curvature's logarithm for a window that covers this share of the stone's radius. */
function curvatureSd(share: number): number {
  const wide = Math.min(1, share);
  return (1 - wide) * CURVATURE_PRIOR.sd + wide * WHOLE_STONE_CURVATURE_SD;
}

/** Half the window: the lobe down to about a tenth of its height, the camera's blur, and some body around. */
function windowReach(scene: HighlightScene, shape: LobeShape): number {
  const halfWidthPx = lobeHalfWidth(shape.alpha, scene.light.sourceSlope) / Math.exp(shape.mean);
  const reach = 2.6 * halfWidthPx + 3 * scene.light.blurPx + 3;
  return Math.min(Math.max(reach, 9), Math.max(9, 1.2 * scene.expected.radiusPx));
}

function opticsFor(window: HighlightWindow, shape: LobeShape, light: HighlightLight, effort: FitEffort) {
  const { sourceSlope, lampTurnRad, blurPx, half } = light;
  const oversampling = effort === QUICK ? 1 : samplesNeeded(window, shape);
  return { sourceSlope, lampTurnRad, blurPx, half, oversampling };
}

/**
 * Samples along a window pixel. The lobe rises over a slope of about α, w pixels where the stone is bent most; the mean
 * of q samples is off by about 1 / (24 q² w²) of the lobe's height.
 */
function samplesNeeded({ stepPx }: HighlightWindow, { alpha, mean, stretch, skew }: LobeShape): number {
  const risePx = alpha / Math.exp(mean + Math.hypot(stretch, skew)) / stepPx;
  if (risePx > SMOOTH_PX.once) return 1;
  return risePx > SMOOTH_PX.twice || stepPx > 1 ? 2 : 3;
}

const placeInWindow = (window: HighlightWindow, at: Place) => ({
  row: (at.row - window.row) / window.stepPx,
  column: (at.column - window.column) / window.stepPx,
});

const placeInCrop = (window: HighlightWindow, shape: Place) => ({
  row: window.row + shape.row * window.stepPx,
  column: window.column + shape.column * window.stepPx,
});

function isInside(window: HighlightWindow, { row, column, mean }: LobeShape): boolean {
  const inside = row > -0.5 && column > -0.5 && row < window.height - 0.5 && column < window.width - 0.5;
  return inside && Number.isFinite(mean);
}

/** Evidence of a quick fit. */
function promise(scene: HighlightScene, found: StoneHighlight): number {
  const explained = evidence(scene, found);
  return behaves(scene, found) ? explained : SECOND_CHANCE * explained;
}

const behaves = (scene: HighlightScene, found: StoneHighlight) =>
  behavesLikeLamp(scene.stone, found, scene.light, scene.own);

/**
 * How much a highlight explains beyond what it leaves over, where its lobe stands out, photo pixels times
 * radiance²; less when it lies where the stone does not face halfway between lamp and camera.
 */
function evidence(scene: HighlightScene, found: StoneHighlight): number {
  const {
    fit,
    problem: { window },
  } = found;
  const highest = Math.max(...fit.lobe);
  const lowest = Math.min(...fit.lobe);
  let sum = 0;
  for (let i = 0; i < fit.lobe.length; i++) {
    if (window.use[i] === 0 || fit.lobe[i]! < 0.25 * highest) continue;
    const whole = fit.amplitude * (fit.lobe[i]! - lowest);
    // A clipped pixel proves no more light than it shows.
    const lobe = window.use[i] === 2 ? Math.min(whole, window.values[i]! - fit.body[i]!) : whole;
    const left = window.values[i]! - fit.body[i]! - fit.amplitude * fit.lobe[i]!;
    sum += lobe * lobe - 3 * (window.use[i] === 2 ? Math.max(0, left) : left) ** 2;
  }
  const at = placeInCrop(window, fit.shape);
  const apart = Math.hypot(at.row - scene.expected.row, at.column - scene.expected.column);
  const place = apart / scene.expected.radiusPx / PLACE_SD;
  return sum * window.stepPx ** 2 * Math.exp(-0.5 * place * place);
}
