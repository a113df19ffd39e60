import { luminance } from '../image/luminance';
import type { Raster } from '../image/raster';
import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { LampTurn } from '../optics/lampLobe';
import { roundLobeRow } from '../optics/roundLobeRow';
import { squareLobeRow } from '../optics/squareLobeRow';
import { combine, cross, dot, normalize, type Vector } from '../optics/vector';
import { blurredMeans } from './blurredMeans';
import type { Circle } from './circleFit';
import { clippedFrom } from './clippedFrom';
import { type LampSpot, lampSpot } from './lampSpot';
import { leastSquares } from './leastSquares';

/** Everything the lamp's image in the reference ball tells. */
export interface BallLamp {
  /** Unit vector to the lamp: x right, y up, z along the camera's axis. */
  readonly direction: Vector;
  readonly angularDiameterDeg: number;
  /** Tangent of the radius of the disc, equal in area, of the surface normals that mirror the lamp. */
  readonly sourceSlope: number;
  /** Shape of the lamp. */
  readonly turnRad: LampTurn;
  /** Radiance of the lamp's image in a perfect mirror, unit of the raster. */
  readonly lampRadiance: number;
  /** The lamp's color: red, green and blue over their luminance. */
  readonly color: readonly [number, number, number];
  /** Standard deviation of the camera's point spread, pixels. */
  readonly blurPx: number;
  /** Share of the highlight's disc at which the camera was at its limit, 0 to 1. */
  readonly clippedShare: number;
}

/** Refractive index of the reference ball: soda-lime glass (handbook value, from memory). */
export const BALL_INDEX = 1.52;
const OVERSAMPLING = 3;
/** Roughness given to the ball so that its lamp disc has no infinitely sharp edge in the samples, in lamp radii. */
const NEARLY_MIRROR = 0.02;
/** A lamp is taken for square when that fits so much better, share of the round lamp's cost. */
const SQUARE_GAIN = 0.85;
/** Share of the bright half of a highlight that is clipped, above which only its outline counts. */
const WASHED_OUT = 0.5;
/** Noise of a highlight's pixels: absolute, and share of the peak. */
const MEASURED_SD = { radiance: 0.004, share: 0.01 };
/** ln of the expected blur, pixels, and its spread: cameras and JPEG rarely leave the range from 0.3 to 2. */
const BLUR_PRIOR = { mean: Math.log(0.7), sd: 0.8 };

/**
 * Reads lamp direction, lamp size, mirror radiance and camera blur from the highlight in a polished glass ball.
 *
 * The lamp's mirror image on a sphere of known radius is a disc in surface-normal angle, blurred by the
 * camera; center, radius, height and blur are fitted together.
 *
 * @param crop - RGB raster around the ball in linear light.
 * @param ball - The ball's circle in the crop, radius > 6 px.
 * @param view - Unit vector from the ball to the camera.
 * @returns The reading, or null when no highlight stands out of the dark glass.
 */
export function ballLamp(crop: Raster, ball: Circle, view: Vector): BallLamp | null {
  const light = luminance(crop);
  const spot = lampSpot(light, ball);
  const fit = spot && fitDisc(light, ball, ballFrame(ball, view), spot);
  if (!fit) return null;
  const half = fit.center;
  const direction = normalize(combine([2 * dot(half, view), half], [-1, view]));
  return {
    direction,
    angularDiameterDeg: lampDiameterDeg(fit.sourceSlope, dot(half, view)),
    sourceSlope: fit.sourceSlope,
    turnRad: fit.turnRad,
    lampRadiance: fit.height / fresnelReflectance(BALL_INDEX, dot(half, view)),
    color: lampColor(crop, spot, fit.radiusPx),
    blurPx: fit.blurPx,
    clippedShare: fit.clippedShare,
  };
}

/**
 * Reads the camera blur alone, as if the lamp were round: moves the ball's rim by some thousandths of its radius.
 *
 * @returns Standard deviation of the point spread, pixels; null as for `ballLamp`.
 */
export function ballBlur(crop: Raster, ball: Circle, view: Vector): number | null {
  const light = luminance(crop);
  const spot = lampSpot(light, ball);
  const sample = spot && discSample(light, ballFrame(ball, view), spot);
  return sample && Math.exp(fitShape(sample, spot.peak, null, startOf(spot, ball)).parameters[4]!);
}

/**
 * Angular diameter of the lamp, or of the disc of equal solid angle.
 *
 * Turning the normal by η turns the mirrored ray by 2η in the plane of incidence but by 2η·cos θ across it, so
 * the normals that mirror a round lamp fill an ellipse 1 / cos θ times as large: dΩ(lamp) = 4 cos θ dΩ(normal).
 *
 * @see Walter et al. 2007, eq. 14, the Jacobian of the half-vector.
 */
function lampDiameterDeg(sourceSlope: number, cosHalfAngle: number): number {
  return (4 * Math.atan(sourceSlope * Math.sqrt(cosHalfAngle)) * 180) / Math.PI;
}

/** Surface normal of the ball at a place in the picture. */
type NormalAt = (row: number, column: number) => Vector;

function ballFrame(ball: Circle, view: Vector): NormalAt {
  const right = normalize(cross([0, 1, 0], view));
  const up = cross(view, right);
  return (row, column) => {
    const x = (column - ball.column) / ball.radiusPx;
    const y = (ball.row - row) / ball.radiusPx;
    const out = Math.sqrt(Math.max(1e-6, 1 - x * x - y * y));
    return combine([x, right], [y, up], [out, view]);
  };
}

interface DiscFit {
  readonly turnRad: LampTurn;
  readonly center: Vector;
  readonly sourceSlope: number;
  readonly height: number;
  readonly blurPx: number;
  readonly radiusPx: number;
  readonly clippedShare: number;
}

function fitDisc(light: Raster, ball: Circle, normalAt: NormalAt, spot: LampSpot): DiscFit | null {
  const sample = discSample(light, normalAt, spot);
  if (!sample) return null;
  const round = fitShape(sample, spot.peak, null, startOf(spot, ball));
  const square = fitShape(sample, spot.peak, bestTurn(sample, round.parameters), [
    ...round.parameters.slice(0, 6),
  ]);
  const { parameters: p, turnRad } = square.cost < SQUARE_GAIN * round.cost ? square : round;
  const inside = Math.PI * spot.radiusPx ** 2;
  const clipped = sample.measured.reduce((sum, value) => sum + (value >= sample.limit ? 1 : 0), 0);
  return {
    center: normalAt(p[0]!, p[1]!),
    turnRad,
    sourceSlope: Math.exp(p[2]!),
    height: Math.exp(p[3]!),
    blurPx: Math.exp(p[4]!),
    radiusPx: spot.radiusPx,
    clippedShare: Math.min(1, clipped / inside),
  };
}

/** Parameters at which the search begins, see `drawLamp`. */
const startOf = (spot: LampSpot, ball: Circle) => [
  spot.row,
  spot.column,
  Math.log(spot.radiusPx / ball.radiusPx),
  Math.log(spot.peak),
  Math.log(0.7),
  spot.floor,
];

/** The window around a spot; null when it reaches out of the crop. */
function discSample(light: Raster, normalAt: NormalAt, spot: LampSpot): DiscSample | null {
  const reach = Math.ceil(1.9 * spot.radiusPx + 4);
  const top = Math.round(spot.row) - reach;
  const left = Math.round(spot.column) - reach;
  const side = 2 * reach + 1;
  if (top < 0 || left < 0 || top + side > light.height || left + side > light.width) return null;
  const measured = Float64Array.from({ length: side * side }, (_, i) => {
    return light.data[(top + Math.floor(i / side)) * light.width + left + (i % side)]!;
  });
  const fineCount = (side * OVERSAMPLING) ** 2;
  return {
    measured,
    limit: clippedFrom(light),
    side,
    top,
    left,
    normals: normalGrid(side, top, left, normalAt),
    xs: new Float64Array(fineCount),
    ys: new Float64Array(fineCount),
    normalAt,
  };
}

/** Normals of the ball at every sample of the window, x, y, z in turn. */
function normalGrid(side: number, top: number, left: number, normalAt: NormalAt): Float64Array {
  const q = OVERSAMPLING;
  const normals = new Float64Array(3 * side * side * q * q);
  for (let y = 0, i = 0; y < side * q; y++) {
    for (let x = 0; x < side * q; x++, i += 3) {
      normals.set(normalAt(top + (y + 0.5) / q - 0.5, left + (x + 0.5) / q - 0.5), i);
    }
  }
  return normals;
}

interface DiscSample {
  readonly measured: Float64Array;
  /** Light from which a pixel counts as clipped. */
  readonly limit: number;
  readonly side: number;
  readonly top: number;
  readonly left: number;
  readonly normals: Float64Array;
  /** Where they lie from the middle of the lamp drawn last, lamp radii: one place for each sample. */
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly normalAt: NormalAt;
}

/** Turn at which a square with the round lamp's size and place fits best. */
function bestTurn(sample: DiscSample, round: Float64Array): number {
  const misfit = (turn: number) =>
    drawLamp(round, sample, turn).reduce((sum, value, i) => sum + (value - sample.measured[i]!) ** 2, 0);
  const turns = Array.from({ length: 12 }, (_, k) => (k * Math.PI) / 24);
  const misfits = turns.map(misfit);
  return turns[misfits.indexOf(Math.min(...misfits))]!;
}

/** Fits row, column, ln slope, ln height, ln blur, floor, and for a square lamp its turn. */
function fitShape(sample: DiscSample, peak: number, turn: LampTurn, start: readonly number[]) {
  const { measured, limit } = sample;
  const sd = MEASURED_SD.radiance + MEASURED_SD.share * peak;
  const residuals = (p: Float64Array, into: Float64Array) => {
    const model = drawLamp(p, sample, turn === null ? null : p[6]!);
    for (let i = 0; i < measured.length; i++) {
      const over = measured[i]! >= limit && model[i]! > measured[i]!;
      into[i] = over ? 0 : (model[i]! - measured[i]!) / sd;
    }
    into[measured.length] = (p[4]! - BLUR_PRIOR.mean) / BLUR_PRIOR.sd;
  };
  // Where most of the disc is clipped, height and blur cannot be told apart: the blur stays at the usual one.
  const clipped = measured.filter((value) => value >= limit).length;
  const isWashedOut = clipped > WASHED_OUT * measured.filter((value) => value >= 0.5 * peak).length;
  const steps = [0.05, 0.05, 0.02, 0.02, isWashedOut ? 0 : 0.02, 0.001, turn === null ? 0 : 0.02];
  const settings = { steps, maxIterations: 40, tolerance: 1e-5 };
  const { parameters, cost } = leastSquares(residuals, measured.length + 1, [...start, turn ?? 0], settings);
  const quarter = Math.PI / 2;
  const turnRad = turn === null ? null : ((parameters[6]! % quarter) + quarter) % quarter;
  return { parameters, cost, turnRad };
}

/** Draws height · lamp + floor for parameters [row, column, ln slope, ln height, ln blur, floor]. */
function drawLamp(p: Float64Array, sample: DiscSample, turnRad: LampTurn): Float64Array {
  const { side, xs, ys } = sample;
  const q = OVERSAMPLING;
  slopesFrom(sample, sample.normalAt(p[0]!, p[1]!), 1 / Math.exp(p[2]!));
  const fine = new Float64Array(side * side * q * q);
  if (turnRad === null) roundLobeRow(xs, ys, NEARLY_MIRROR, fine);
  else squareLobeRow(xs, ys, turnRad, NEARLY_MIRROR, fine);
  // On what is no ball the blur can run away; beyond half the window it changes nothing but the time taken.
  const sigma = Math.min(side / 2, Math.exp(p[4]!)) * q;
  const model = blurredMeans(fine, side, side, q, sigma, new Float64Array(side * side));
  const height = Math.exp(p[3]!);
  for (let i = 0; i < model.length; i++) model[i] = p[5]! + height * model[i]!;
  return model;
}

/** Fills in where each sample's normal lies from one in the middle, in lamp radii. */
function slopesFrom({ normals, xs, ys }: DiscSample, center: Vector, perSlope: number): void {
  const [right, up] = tangents(center);
  for (let i = 0, j = 0; i < xs.length; i++, j += 3) {
    const nx = normals[j]!;
    const ny = normals[j + 1]!;
    const nz = normals[j + 2]!;
    const scale = perSlope / (center[0] * nx + center[1] * ny + center[2] * nz);
    xs[i] = scale * (right[0] * nx + right[1] * ny + right[2] * nz);
    ys[i] = scale * (up[0] * nx + up[1] * ny + up[2] * nz);
  }
}

/** Right and up on the plane that touches the ball at a normal. */
function tangents(normal: Vector): [Vector, Vector] {
  const right = normalize(cross([0, 1, 0], normal));
  return [right, cross(normal, right)];
}

/** Mean color of the highlight's middle; white when the camera was at its limit there. */
function lampColor(crop: Raster, spot: LampSpot, radiusPx: number): [number, number, number] {
  const sums: [number, number, number] = [0, 0, 0];
  const limit = clippedFrom(crop);
  const reach = Math.max(1, 0.6 * radiusPx);
  for (let row = 0; row < crop.height; row++) {
    for (let column = 0; column < crop.width; column++) {
      if (Math.hypot(row - spot.row, column - spot.column) > reach) continue;
      const i = 3 * (row * crop.width + column);
      if (Math.max(crop.data[i]!, crop.data[i + 1]!, crop.data[i + 2]!) >= limit) return [1, 1, 1];
      for (let c = 0; c < 3; c++) sums[c]! += crop.data[i + c]!;
    }
  }
  const white = 0.2126 * sums[0] + 0.7152 * sums[1] + 0.0722 * sums[2];
  return [sums[0] / white, sums[1] / white, sums[2] / white];
}
