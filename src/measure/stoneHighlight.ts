import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { LampTurn } from '../optics/lampLobe';
import type { Vector } from '../optics/vector';
import { behavesLikeLamp } from './behavesLikeLamp';
import { clippedPixels } from './clippedPixels';
import { colorWeights } from './colorWeights';
import { type HighlightCandidate, highlightCandidates } from './highlightCandidates';
import { type FitEffort, type HighlightFit, type HighlightProblem, highlightFit } from './highlightFit';
import { EVEN_CURVATURE, type HighlightWindow, type LobeShape } from './highlightModel';
import { type HighlightPlace, highlightPlace } from './highlightPlace';
import { highlightWindow } from './highlightWindow';
import { lobeHalfWidth } from './lobeHalfWidth';
import { looksLikeSpeck } from './looksLikeSpeck';

/** Lamp and camera as a stone's highlight needs them. */
export interface HighlightLight {
  /** Radiance of the lamp's image in a perfect mirror, unit of the raster. */
  readonly lampRadiance: number;
  /** Half-vector radius and shape of the lamp. */
  readonly sourceSlope: number;
  readonly lampTurnRad: LampTurn;
  /** Standard deviation of the camera's point spread, pixels. */
  readonly blurPx: number;
  /** Unit vector halfway between lamp and camera, in a frame whose z points from the stone to the camera. */
  readonly half: Vector;
}

/** The best highlight of a stone under one assumed refractive index. */
export interface StoneHighlight {
  readonly problem: HighlightProblem;
  readonly fit: HighlightFit;
}

/** Index under which the search for the highlight is made; most tumbled stones are quartz. */
export const SEARCH_INDEX = 1.54;

/** Curvature expected of a stone with silhouette radius 1: flatter than a ball, facets flatter still. */
export const CURVATURE_PRIOR = { mean: Math.log(0.75), sd: 0.7 };
/** A lobe as wide as the stone is bent by the stone's mean curvature, which its silhouette tells much better. */
const WHOLE_STONE_CURVATURE_SD = 0.05;
/** Spread of the mirror radiance's logarithm from ball to stone: exposure noise, lamp falloff, ball's index. */
const AMPLITUDE_SD = 0.025;
/** How far from the expected place a highlight may lie, standard deviation in radii of the stone. */
const PLACE_SD = 0.4;
/**
 * Mixes of the channels: each serves lobes from that height on, share of a perfect polish, and lets pass a
 * pattern of that share, since turning down weak colors brings in color noise and color blur.
 */
const MIXES = [
  { leastShare: 0.3, patience: 0.08 },
  { leastShare: 0.06, patience: 0.02 },
  { leastShare: 0, patience: 0.005 },
];
/** Under the highlight the stone is at least this share of its own dark level (fifth percentile). */
const LEAST_BODY_SHARE = 0.6;
const QUICK: FitEffort = { rounds: 2, iterations: 6, unevenCurvature: false };
const THOROUGH: FitEffort = { rounds: 3, iterations: 14, unevenCurvature: false };
/** Near-mirrors show the curvature's change in the outline of the lamp's image. */
const NEAR_MIRROR: FitEffort = { ...THOROUGH, unevenCurvature: true };
const NEAR_MIRROR_SHARE = 0.5;
/** Candidates fitted thoroughly. */
const FINALISTS = 2;
const FEWEST_PIXELS = 40;

/**
 * Finds and fits the lamp's image on one stone.
 *
 * @param stone - RGB crop in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone in the crop, its rim left out.
 * @param light - Lamp and camera.
 * @returns The highlight that explains most, or null when nothing on the stone behaves like one.
 */
export function stoneHighlight(stone: Raster, mask: Mask, light: HighlightLight): StoneHighlight | null {
  const scene = sceneOf(stone, mask, light);
  const spots = [0, scene.mixes.length - 1].flatMap((mix) =>
    highlightCandidates(scene.mixes[mix]!.radiance, mask),
  );
  const candidates = [...spots, ...wideCandidates(scene)];
  const quick = candidates
    .map((candidate) => fitFrom(scene, firstGuess(scene, candidate), candidate, QUICK, 1))
    .filter((found) => found !== null)
    .sort((a, b) => evidence(scene, b) - evidence(scene, a));
  let best: StoneHighlight | null = null;
  for (const { problem, fit } of quick.slice(0, FINALISTS)) {
    const effort = heightShare(scene, fit.shape) > NEAR_MIRROR_SHARE ? NEAR_MIRROR : THOROUGH;
    const found = fitFrom(scene, fit.shape, placeInCrop(problem.window, fit.shape), effort, 2);
    if (!found || looksLikeSpeck(found)) continue;
    if (evidence(scene, found) > (best ? evidence(scene, best) : 0)) best = found;
  }
  return best;
}

interface Scene {
  readonly stone: Raster;
  /** The stone's light in several mixes of the channels, from luminance to the mix with the least pattern. */
  readonly mixes: readonly {
    readonly leastShare: number;
    readonly radiance: Raster;
    readonly leastBody: number;
  }[];
  readonly mask: Mask;
  readonly clipped: Mask;
  readonly light: HighlightLight;
  /** Radiance of a perfect polish of the search index. */
  readonly amplitude: number;
  readonly expected: HighlightPlace;
}

function sceneOf(stone: Raster, mask: Mask, light: HighlightLight): Scene {
  const amplitude = light.lampRadiance * fresnelReflectance(SEARCH_INDEX, light.half[2]);
  const mixes = MIXES.map(({ leastShare, patience }) => {
    const radiance = luminance(stone, colorWeights(stone, mask, patience * Math.min(1, amplitude)));
    const own = radiance.data.filter((_, i) => mask.data[i] === 1).sort();
    const dark = own[Math.floor(0.05 * own.length)] ?? 0;
    return { leastShare, radiance, leastBody: LEAST_BODY_SHARE * Math.max(0, dark) };
  });
  return {
    stone,
    mixes,
    mask,
    clipped: clippedPixels(stone),
    light,
    amplitude,
    expected: highlightPlace(mask, light.half),
  };
}

/** Broad lobes at the expected place, which leave no spot that stands out of the pattern. */
function wideCandidates({ expected, amplitude }: Scene): HighlightCandidate[] {
  return [0.25, 0.4].map((share) => ({
    row: expected.row,
    column: expected.column,
    radiusPx: share * expected.radiusPx,
    contrast: 0.01 * amplitude,
    peak: 0,
  }));
}

function firstGuess(scene: Scene, candidate: HighlightCandidate): LobeShape {
  const a = scene.light.sourceSlope;
  const share = Math.min(0.95, Math.max(0.004, (2.2 * candidate.contrast) / scene.amplitude));
  const alpha = Math.min(0.45, Math.max(0.006, a * Math.sqrt(1 / share - 1)));
  const mean = Math.log(lobeHalfWidth(alpha, a) / candidate.radiusPx);
  return { row: 0, column: 0, mean, stretch: 0, skew: 0, alpha, change: EVEN_CURVATURE };
}

interface Place {
  readonly row: number;
  readonly column: number;
}

/** Fits in a window that suits the start, then again in one that suits what was found. */
function fitFrom(
  scene: Scene,
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
    const problem: HighlightProblem = { window, optics: opticsFor(window, scene.light, effort), prior };
    const fit = highlightFit(problem, { ...shape, ...placeInWindow(window, center) }, effort);
    if (!isInside(window, fit.shape)) return null;
    found = { problem, fit };
    shape = fit.shape;
    center = placeInCrop(window, shape);
    if (Math.abs(Math.log(windowReach(scene, shape) / reach)) < 0.25) break;
  }
  return found;
}

/** Height of the lobe, share of a perfect polish. */
function heightShare({ light }: Scene, { alpha }: LobeShape): number {
  return 1 / (1 + (alpha / light.sourceSlope) ** 2);
}

/** The mix of channels that suits the height of the lobe. */
function mixFor(scene: Scene, shape: LobeShape) {
  const { mixes } = scene;
  const share = heightShare(scene, shape);
  return mixes.find((mix) => share >= mix.leastShare) ?? mixes[mixes.length - 1]!;
}

/** Spread of the curvature's logarithm for a window that covers this share of the stone's radius. */
function curvatureSd(share: number): number {
  const wide = Math.min(1, share);
  return (1 - wide) * CURVATURE_PRIOR.sd + wide * WHOLE_STONE_CURVATURE_SD;
}

/** Half the window: the lobe down to about a tenth of its height, the camera's blur, and some body around. */
function windowReach(scene: Scene, shape: LobeShape): number {
  const halfWidthPx = lobeHalfWidth(shape.alpha, scene.light.sourceSlope) / Math.exp(shape.mean);
  const reach = 2.6 * halfWidthPx + 3 * scene.light.blurPx + 3;
  return Math.min(Math.max(reach, 9), Math.max(9, 1.2 * scene.expected.radiusPx));
}

function opticsFor(window: HighlightWindow, light: HighlightLight, effort: FitEffort) {
  const oversampling = effort === QUICK ? 1 : window.stepPx === 1 ? 3 : 2;
  const { sourceSlope, lampTurnRad, blurPx, half } = light;
  return { sourceSlope, lampTurnRad, blurPx, half, oversampling };
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

/**
 * How much a highlight explains beyond what it leaves over, where its lobe stands out, photo pixels times
 * radiance²; less when it lies where the stone does not face halfway between lamp and camera.
 */
function evidence(scene: Scene, found: StoneHighlight): number {
  if (!behavesLikeLamp(scene.stone, found, scene.light, scene.expected.radiusPx)) return 0;
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
