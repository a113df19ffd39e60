import { lobeShare } from '../optics/lobeShare';
import { smithShadowing } from '../optics/smithShadowing';
import type { Vector } from '../optics/vector';
import { domeSteepness } from './stoneRelief';
import type { StoneSamples } from './stoneSamples';

/** Lamp as a wide lobe needs it. */
export interface ShadingLight {
  readonly sourceSlope: number;
  /** Unit vector halfway between lamp and camera, z to the camera. */
  readonly half: Vector;
}

/** Shape, fill light and roughness of a stone. */
export interface ShadingShape {
  /** Logarithm of the height over the silhouette's radius. */
  readonly lnHeight: number;
  readonly tilt: readonly [number, number];
  readonly lnFlatness: number;
  /** Logarithm of the fill light's irradiance over the lamp's. */
  readonly lnFill: number;
  readonly alpha: number;
}

/** What a tumbled stone is like before it is looked at; from the development scenes. */
export const SHADING_PRIOR = {
  lnHeight: { mean: Math.log(0.6), sd: 0.25 },
  tiltSd: 0.15,
  lnFlatness: { mean: Math.log(1.8), sd: 0.2 },
  lnFill: { mean: Math.log(1.2), sd: 0.5 },
  lnGainSd: 0.05,
} as const;

/** Light of a stone at each sample: of a body of albedo one, in the lamp's irradiance over π, and of the lobe, in a perfect polish. */
export interface StoneShading {
  readonly body: Float64Array;
  readonly lobe: Float64Array;
  /** Slope away from the normal that mirrors the lamp, lamp radii; NaN where the dome is too steep to know. */
  readonly apart: Float64Array;
}

/**
 * Shades a dome: Lambert's cosine to the lamp and fill light from all of the upper half space, and the GGX lobe of a small lamp.
 *
 * @param into - Filled; body is 0 where the dome is too steep to know.
 * @see Walter et al. 2007, eq. 20 (microfacet reflection), eq. 33 (GGX), eq. 34 (shadowing).
 */
export function shadeStone(
  samples: StoneSamples,
  light: ShadingLight,
  shape: ShadingShape,
  into: StoneShading,
): void {
  const { half, sourceSlope } = light;
  const relief = {
    heightShare: Math.exp(shape.lnHeight),
    tilt: shape.tilt,
    flatness: Math.exp(shape.lnFlatness),
  };
  const lamp: Vector = [2 * half[2] * half[0], 2 * half[2] * half[1], 2 * half[2] * half[2] - 1];
  const fill = Math.exp(shape.lnFill);
  const { alpha } = shape;
  const seenHeadOn = smithShadowing(half[2], alpha) ** 2;
  const { x, y } = samples;
  for (let i = 0; i < x.length; i++) {
    into.body[i] = 0;
    into.lobe[i] = 0;
    into.apart[i] = Number.NaN;
    const steep = domeSteepness(samples.silhouette, relief, x[i]!, y[i]!);
    if (steep < 0) continue;
    const [xx, xy, yy] = samples.silhouette.inverse;
    const right = steep * (xx * x[i]! + xy * y[i]!) - relief.tilt[0];
    const up = steep * (xy * x[i]! + yy * y[i]!) - relief.tilt[1];
    const facing = 1 / Math.sqrt(right * right + up * up + 1);
    const toLamp = facing * (right * lamp[0] + up * lamp[1] + lamp[2]);
    into.body[i] = Math.max(0, toLamp) + (fill * (1 + facing)) / 2;
    const along = facing * (right * half[0] + up * half[1] + half[2]);
    if (toLamp <= 0 || along <= 0) continue;
    const apart = Math.sqrt(Math.max(0, 1 - along * along)) / along / sourceSlope;
    into.apart[i] = apart;
    const shadowing = (smithShadowing(toLamp, alpha) * smithShadowing(facing, alpha)) / seenHeadOn;
    const fourth = along * along * along * along;
    into.lobe[i] = (lobeShare(apart, alpha / sourceSlope) * shadowing * half[2]) / (facing * fourth);
  }
}
