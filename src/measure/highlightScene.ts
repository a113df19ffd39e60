import { luminance } from '../image/luminance';
import { nthSmallest } from '../image/nthSmallest';
import type { Mask, Raster } from '../image/raster';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { LampTurn } from '../optics/lampLobe';
import type { Vector } from '../optics/vector';
import type { StoneOwn } from './behavesLikeLamp';
import { clippedPixels } from './clippedPixels';
import { bodyCovariance, colorWeights } from './colorWeights';
import type { LobeShape } from './highlightModel';
import { type HighlightPlace, highlightPlace } from './highlightPlace';
import { patternSpread } from './patternSpread';

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

/** Index under which the search for the highlight is made; most tumbled stones are quartz. */
export const SEARCH_INDEX = 1.54;

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

/** A stone, its light in several mixes, and what is known of it before a highlight is looked for. */
export interface HighlightScene {
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
  readonly own: StoneOwn;
}

/**
 * Mixes the stone's light and looks up what is known.
 *
 * @param stone - RGB crop in linear light, lamp white = (1, 1, 1).
 * @param mask - The stone in the crop, its rim left out.
 * @param light - Lamp and camera.
 */
export function highlightScene(stone: Raster, mask: Mask, light: HighlightLight): HighlightScene {
  const amplitude = light.lampRadiance * fresnelReflectance(SEARCH_INDEX, light.half[2]);
  const pattern = bodyCovariance(stone, mask);
  const mixes = MIXES.map(({ leastShare, patience }) => {
    const radiance = luminance(stone, colorWeights(pattern, patience * Math.min(1, amplitude)));
    const own = insideOf(radiance.data, mask);
    const dark = nthSmallest(own, Math.floor(0.05 * own.length)) ?? 0;
    return { leastShare, radiance, leastBody: LEAST_BODY_SHARE * Math.max(0, dark) };
  });
  const expected = highlightPlace(mask, light.half);
  return {
    stone,
    mixes,
    mask,
    clipped: clippedPixels(stone),
    light,
    amplitude,
    expected,
    own: { radiusPx: expected.radiusPx, patternSpread: patternSpread(stone, mask) },
  };
}

/** The values of a mask's pixels. */
function insideOf(data: Float32Array, mask: Mask): Float32Array {
  const inside = new Float32Array(data.length);
  let count = 0;
  for (let i = 0; i < data.length; i++) if (mask.data[i] === 1) inside[count++] = data[i]!;
  return inside.subarray(0, count);
}

/** Height of the lobe, share of a perfect polish. */
export function heightShare({ light }: HighlightScene, { alpha }: LobeShape): number {
  return 1 / (1 + (alpha / light.sourceSlope) ** 2);
}

/** The mix of channels that suits the height of the lobe. */
export function mixFor(scene: HighlightScene, shape: LobeShape) {
  const { mixes } = scene;
  const share = heightShare(scene, shape);
  return mixes.find((mix) => share >= mix.leastShare) ?? mixes[mixes.length - 1]!;
}
