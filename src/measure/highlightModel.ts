import { drawLobe, type LobeField, type SlopeFactors } from '../kernels/lobeKernels';
import type { LampTurn } from '../optics/lampLobe';
import type { Vector } from '../optics/vector';
import { blockWeights } from './blockWeights';

/** No slope is steeper than this, lamp radii: past the stone's rim. */
const STEEPEST = 1e3;

/** A square-pixel window on a stone around one highlight. */
export interface HighlightWindow {
  readonly width: number;
  readonly height: number;
  /** Photo pixels per window pixel. */
  readonly stepPx: number;
  /** Photo row and column of the center of the window's first pixel. */
  readonly row: number;
  readonly column: number;
  /** Radiance, one value per pixel, lamp-white combination of the channels. */
  readonly values: Float64Array;
  /** 1 = stone, 0 = not to be used, 2 = clipped: the true value is at least this. */
  readonly use: Uint8Array;
}

/** The lobe as the fit varies it. */
export interface LobeShape {
  /** Center, window pixels. */
  readonly row: number;
  readonly column: number;
  /** Matrix logarithm of the curvature, slope per photo pixel: [[mean + stretch, skew], [skew, mean − stretch]]. */
  readonly mean: number;
  readonly stretch: number;
  readonly skew: number;
  /** GGX roughness. */
  readonly alpha: number;
  /** How the curvature changes across the lobe; all zero on a surface of even curvature. */
  readonly change: CurvatureChange;
}

/**
 * Third-order form of the surface, [xxx, xxy, xyy, yyy]: the slope is its gradient, in units of the slope that the
 * mean curvature brings at a distance of one lamp radius.
 */
export type CurvatureChange = readonly [number, number, number, number];

export const EVEN_CURVATURE: CurvatureChange = [0, 0, 0, 0];

/**
 * Curvature matrix, slope per photo pixel, of a lobe's logarithmic parameters.
 *
 * @returns [Kxx, Kxy, Kyy], x along columns and y along rows.
 */
export function curvature(shape: LobeShape): [number, number, number] {
  const size = Math.hypot(shape.stretch, shape.skew);
  const scale = Math.exp(shape.mean);
  const even = scale * Math.cosh(size);
  const odd = size < 1e-9 ? scale : (scale * Math.sinh(size)) / size;
  return [even + odd * shape.stretch, odd * shape.skew, even - odd * shape.stretch];
}

/** What the lamp and the camera add to a lobe. */
export interface LobeOptics {
  /** Half-vector radius of the lamp; of the disc of equal area for a square one. */
  readonly sourceSlope: number;
  /** Shape of the lamp. */
  readonly lampTurnRad: LampTurn;
  /** Standard deviation of the camera's point spread, photo pixels. */
  readonly blurPx: number;
  /**
   * Unit vector halfway between lamp and camera, x right, y up, z to the camera: the normal at the lobe's center.
   * Null for the paraxial approximation, in which slopes grow evenly with the distance.
   */
  readonly half: Vector | null;
  /** Each window pixel is sampled `oversampling`² times. */
  readonly oversampling: number;
}

/**
 * Draws the share of the lamp's radiance that the rough mirror sends to each window pixel.
 *
 * The surface normal's sideways part is taken to grow linearly with the distance from the center, as it does on a
 * sphere; the result is convolved with the camera's point spread and averaged over the pixels.
 *
 * @param window - Supplies the size and the step.
 * @param shape - Center, curvature and roughness.
 * @param optics - Lamp and camera.
 * @param into - Overwritten and returned; a new array when left out.
 * @returns `width * height` values, 0 to 1.
 */
export function lobePicture(
  window: { readonly width: number; readonly height: number; readonly stepPx: number },
  shape: LobeShape,
  optics: LobeOptics,
  into: Float64Array = new Float64Array(window.width * window.height),
): Float64Array {
  const { width, height, stepPx } = window;
  const q = optics.oversampling;
  const weights = blockWeights((optics.blurPx / stepPx) * q, q);
  drawLobe(lobeField(shape, optics, stepPx), { width, height, q }, weights, into);
  return into;
}

/** Surface and lamp in samples, the slope taken apart along the tilt and across it as `tiltedField` does. */
function lobeField(shape: LobeShape, optics: LobeOptics, stepPx: number): LobeField {
  const { sourceSlope, lampTurnRad, half, oversampling: q } = optics;
  const { kxx, kxy, kyy, a, b, c, d } = slopeTerms(shape, optics, stepPx / q);
  const { sine, cosine, ex, ey } = half === null ? { sine: 0, cosine: 1, ex: 1, ey: 0 } : tiltOf(half);
  const [perAlong, perAcross] = half === null ? [1, 1] : [sourceSlope * cosine, sourceSlope];
  const right = [kxx, kxy, 3 * a, 2 * b, c];
  const down = [kxy, kyy, b, 2 * c, 3 * d];
  return {
    along: right.map((value, k) => perAlong * (ex * value + ey * down[k]!)) as unknown as SlopeFactors,
    across: right.map((value, k) => perAcross * (ex * down[k]! - ey * value)) as unknown as SlopeFactors,
    row: (shape.row + 0.5) * q - 0.5,
    column: (shape.column + 0.5) * q - 0.5,
    tilt: half && { sine, cosine },
    turnRad: lampTurnRad === null ? null : lampTurnRad + Math.atan2(ey, ex),
    radius: sourceSlope,
    alphaOverA: shape.alpha / sourceSlope,
  };
}

/** Slope of a surface, to the right and down, by rows and columns from the lobe's center; lamp radii. */
export type SlopeField = (rows: number, columns: number) => readonly [right: number, down: number];

/**
 * Slope of the surface away from the mirroring normal, in lamp radii.
 *
 * @param shape - Curvature and its change.
 * @param optics - Lamp, and where the surface faces at the center.
 * @param pitchPx - Photo pixels per row and column.
 */
export function slopeField(
  shape: LobeShape,
  optics: Pick<LobeOptics, 'sourceSlope' | 'half'>,
  pitchPx: number,
): SlopeField {
  const { kxx, kxy, kyy, a, b, c, d } = slopeTerms(shape, optics, pitchPx);
  const even: SlopeField = (dy, dx) => [
    kxx * dx + kxy * dy + 3 * a * dx * dx + 2 * b * dx * dy + c * dy * dy,
    kxy * dx + kyy * dy + b * dx * dx + 2 * c * dx * dy + 3 * d * dy * dy,
  ];
  return optics.half === null ? even : tiltedField(even, optics.half, optics.sourceSlope);
}

/** Curvature (k) and its change (a to d, third order) of a surface, lamp radii per row and column. */
export interface SlopeTerms {
  readonly kxx: number;
  readonly kxy: number;
  readonly kyy: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

function slopeTerms(
  shape: LobeShape,
  { sourceSlope }: Pick<LobeOptics, 'sourceSlope'>,
  pitchPx: number,
): SlopeTerms {
  const [kxx, kxy, kyy] = curvature(shape).map((k) => (k * pitchPx) / sourceSlope) as [
    number,
    number,
    number,
  ];
  // Distances in lamp radii of the mean curvature, so that the change does not depend on the scale.
  const unit = (Math.exp(shape.mean) * pitchPx) / sourceSlope;
  const [a, b, c, d] = shape.change.map((value) => value * unit * unit) as [number, number, number, number];
  return { kxx, kxy, kyy, a, b, c, d };
}

/**
 * Slopes of a normal whose sideways part starts at the half vector's and grows by the given field.
 *
 * With the tangent t₁ toward the camera's axis and t₂ across, the slope is (n·t₁, n·t₂) / n·h. The field is first
 * stretched by cos θ along the tilt, so that to first order it is the slope itself.
 */
function tiltedField(field: SlopeField, half: Vector, sourceSlope: number): SlopeField {
  const { sine, cosine, ex, ey } = tiltOf(half);
  return (dy, dx) => {
    const [right, down] = field(dy, dx);
    const outward = sourceSlope * cosine * (ex * right + ey * down) + sine;
    const across = sourceSlope * (ex * down - ey * right);
    const z2 = 1 - outward * outward - across * across;
    if (z2 <= 1e-4) return [STEEPEST, 0];
    const z = Math.sqrt(z2);
    const along = outward * sine + z * cosine;
    if (along <= 1e-3) return [STEEPEST, 0];
    const scale = 1 / (along * sourceSlope);
    const u1 = (outward * cosine - z * sine) * scale;
    const u2 = across * scale;
    return [ex * u1 - ey * u2, ey * u1 + ex * u2];
  };
}

/** Angle from the camera's axis to the half vector, and its direction in the picture: right, down. */
function tiltOf(half: Vector) {
  const sine = Math.hypot(half[0], half[1]);
  const [ex, ey] = sine > 1e-6 ? [half[0] / sine, -half[1] / sine] : [1, 0];
  return { sine, cosine: half[2], ex, ey };
}

/**
 * Share of its diffuse light that the surface keeps at each window pixel for having turned away from the
 * normal at the lobe's center: the cosine of the turn, as Lambert's law has it for light from all around there.
 *
 * @param window - Supplies the size and the step.
 * @param shape - Center and curvature.
 * @param cosines - Overwritten and returned; a new array when left out.
 * @returns `width * height` values, 0 to 1, 1 at the center.
 */
export function turningAway(
  window: { readonly width: number; readonly height: number; readonly stepPx: number },
  shape: LobeShape,
  cosines: Float64Array = new Float64Array(window.width * window.height),
): Float64Array {
  const [kxx, kxy, kyy] = curvature(shape).map((k) => k * window.stepPx) as [number, number, number];
  for (let y = 0, i = 0; y < window.height; y++) {
    const dy = y - shape.row;
    for (let x = 0; x < window.width; x++, i++) {
      const dx = x - shape.column;
      const right = kxx * dx + kxy * dy;
      const down = kxy * dx + kyy * dy;
      cosines[i] = 1 / Math.sqrt(1 + right * right + down * down);
    }
  }
  return cosines;
}
