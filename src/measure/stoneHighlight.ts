import { luminance } from '../image/luminance';
import type { Mask, Raster } from '../image/raster';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import { colorWeights } from './colorWeights';
import { type HighlightCandidate, highlightCandidates } from './highlightCandidates';
import { type HighlightFit, type HighlightPrior, highlightFit } from './highlightFit';
import { curvature, type HighlightWindow, type LobeOptics, type LobeShape } from './highlightModel';
import { highlightWindow } from './highlightWindow';
import { lobeHalfWidth } from './lobeHalfWidth';

/** Lamp and camera as a stone's highlight needs them. */
export interface HighlightLight {
  /** Radiance of the lamp's image in a perfect mirror, unit of the raster. */
  readonly lampRadiance: number;
  /** Half-vector radius of the lamp. */
  readonly sourceSlope: number;
  /** Standard deviation of the camera's point spread, pixels. */
  readonly blurPx: number;
  /** Cosine of half the angle between lamp and camera. */
  readonly cosHalfAngle: number;
}

/** The best highlight of a stone under one assumed refractive index. */
export interface StoneHighlight {
  readonly fit: HighlightFit;
  readonly window: HighlightWindow;
  readonly optics: LobeOptics;
  readonly prior: HighlightPrior;
}

/** Index under which the search for the highlight is made; most tumbled stones are quartz. */
export const SEARCH_INDEX = 1.54;

/** Curvature expected of a stone with silhouette radius 1: flatter than a ball, facets flatter still. */
const CURVATURE_PRIOR = { mean: Math.log(0.7), sd: 0.8 };
/** Spread of the mirror radiance's logarithm from ball to stone: exposure noise, lamp falloff, ball's index. */
const AMPLITUDE_SD = 0.05;
/** From this share of full scale on a channel counts as clipped. */
export const CLIPPED_FROM = 0.97;

/**
 * Finds and fits the lamp's image on one stone.
 *
 * @param stone - RGB crop in linear light.
 * @param mask - The stone in the crop, its rim left out.
 * @param light - Lamp and camera.
 * @returns The highlight that explains most, or null when nothing on the stone behaves like one.
 */
export function stoneHighlight(stone: Raster, mask: Mask, light: HighlightLight): StoneHighlight | null {
  const amplitude = light.lampRadiance * fresnelReflectance(SEARCH_INDEX, light.cosHalfAngle);
  const clipped = clippedPixels(stone);
  const radiance = luminance(stone, colorWeights(stone, mask, amplitude));
  const radiusPx = Math.sqrt(mask.data.reduce((sum, inside) => sum + inside, 0) / Math.PI);
  const prior: HighlightPrior = {
    amplitude,
    amplitudeSd: AMPLITUDE_SD,
    curvatureMean: CURVATURE_PRIOR.mean - Math.log(radiusPx),
    curvatureSd: CURVATURE_PRIOR.sd,
  };
  const scene: Scene = { radiance, mask, clipped, light, prior, radiusPx };
  let best: StoneHighlight | null = null;
  let mostExplained = 0;
  for (const candidate of highlightCandidates(radiance, mask)) {
    const found = fitCandidate(scene, candidate);
    const explained = found ? explainedSquares(found) : 0;
    if (found && explained > mostExplained) {
      best = found;
      mostExplained = explained;
    }
  }
  return best;
}

interface Scene {
  readonly radiance: Raster;
  readonly mask: Mask;
  readonly clipped: Mask;
  readonly light: HighlightLight;
  readonly prior: HighlightPrior;
  readonly radiusPx: number;
}

function clippedPixels(stone: Raster): Mask {
  const data = new Uint8Array(stone.width * stone.height);
  for (let i = 0; i < data.length; i++) {
    const most = Math.max(stone.data[3 * i]!, stone.data[3 * i + 1]!, stone.data[3 * i + 2]!);
    data[i] = most >= CLIPPED_FROM ? 1 : 0;
  }
  return { width: stone.width, height: stone.height, data };
}

/** Fits from a narrow window, then again in a window that suits the width found. */
function fitCandidate(scene: Scene, candidate: HighlightCandidate): StoneHighlight | null {
  let shape = firstGuess(scene, candidate);
  let center = { row: candidate.row, column: candidate.column };
  let found: StoneHighlight | null = null;
  for (let pass = 0; pass < 3; pass++) {
    const reach = windowReach(scene, shape);
    const window = highlightWindow(scene.radiance, scene.mask, scene.clipped, center, reach);
    if (window.use.reduce((sum, use) => sum + (use ? 1 : 0), 0) < 40) return found;
    const optics = opticsFor(window, scene.light);
    const start = { ...shape, ...inWindow(window, center) };
    const fit = highlightFit(window, optics, scene.prior, { shape: start });
    shape = fit.shape;
    center = inCrop(window, fit.shape);
    found = { fit, window, optics, prior: scene.prior };
    if (!insideWindow(window, fit.shape)) return null;
    if (Math.abs(Math.log(windowReach(scene, shape) / reach)) < 0.25) break;
  }
  return found;
}

/** Half the window: the lobe down to about a tenth of its height, the camera's blur, and some body around. */
function windowReach(scene: Scene, shape: LobeShape): number {
  const a = scene.light.sourceSlope;
  const halfWidthPx = lobeHalfWidth(shape.alpha, a) / Math.exp(shape.mean);
  const reach = 2.6 * halfWidthPx + 3 * scene.light.blurPx + 3;
  return Math.min(Math.max(reach, 9), Math.max(9, 1.2 * scene.radiusPx));
}

function firstGuess(scene: Scene, candidate: HighlightCandidate): LobeShape {
  const a = scene.light.sourceSlope;
  const share = Math.min(0.95, Math.max(0.004, (2.2 * candidate.contrast) / scene.prior.amplitude));
  const alpha = Math.min(0.45, Math.max(0.006, a * Math.sqrt(1 / share - 1)));
  const mean = Math.log(lobeHalfWidth(alpha, a) / candidate.radiusPx);
  return { row: 0, column: 0, mean, stretch: 0, skew: 0, alpha };
}

export function opticsFor(window: HighlightWindow, light: HighlightLight): LobeOptics {
  const oversampling = window.stepPx === 1 ? 3 : 2;
  return { sourceSlope: light.sourceSlope, blurPx: light.blurPx, oversampling };
}

const inWindow = (window: HighlightWindow, at: { row: number; column: number }) => ({
  row: (at.row - window.row) / window.stepPx,
  column: (at.column - window.column) / window.stepPx,
});

const inCrop = (window: HighlightWindow, shape: LobeShape) => ({
  row: window.row + shape.row * window.stepPx,
  column: window.column + shape.column * window.stepPx,
});

function insideWindow(window: HighlightWindow, shape: LobeShape): boolean {
  const row = Math.round(shape.row);
  const column = Math.round(shape.column);
  if (row < 0 || column < 0 || row >= window.height || column >= window.width) return false;
  return curvature(shape).every(Number.isFinite);
}

/** Sum of squares that the lobe takes off the window, photo pixels times radiance². */
export function explainedSquares({ fit, window }: StoneHighlight): number {
  const mean = weightedMean(fit.lobe, fit.weights);
  let sum = 0;
  for (let i = 0; i < fit.lobe.length; i++) {
    if (window.use[i] === 0) continue;
    const lobe = fit.amplitude * (fit.lobe[i]! - mean);
    const model = fit.body[i]! + fit.amplitude * fit.lobe[i]!;
    const left = window.use[i] === 2 ? Math.max(0, window.values[i]! - model) : window.values[i]! - model;
    sum += lobe * lobe - left * left;
  }
  return sum * window.stepPx ** 2;
}

function weightedMean(values: Float64Array, weights: Float64Array): number {
  let sum = 0;
  let total = 0;
  for (let i = 0; i < values.length; i++) {
    sum += weights[i]! * values[i]!;
    total += weights[i]!;
  }
  return total > 0 ? sum / total : 0;
}
