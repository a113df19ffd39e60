import { luminance } from '../image/luminance';
import type { Raster } from '../image/raster';
import { blockMeans } from '../kernels/blockMeans';
import { roundLobes, squareLobes } from '../kernels/lobeKernels';
import type { LampTurn } from '../optics/lampLobe';
import { combine, cross, normalize, type Vector } from '../optics/vector';
import { blockWeights } from './blockWeights';
import type { Circle } from './circleFit';
import { clippedFrom } from './clippedFrom';
import { type LampSpot, lampSpot } from './lampSpot';
import { leastSquares, type Residuals } from './leastSquares';

/** The lamp's image in a ball as fitted. */
export interface LampFit {
  /** Shape of the lamp. */
  readonly turnRad: LampTurn;
  /** Normal at the middle of its image. */
  readonly center: Vector;
  /** Tangent of the radius of the disc, equal in area, of the surface normals that mirror the lamp. */
  readonly sourceSlope: number;
  /** Radiance of its image over that of the glass around. */
  readonly height: number;
  /** Standard deviation of the camera's point spread, pixels. */
  readonly blurPx: number;
  /** Share of the highlight's disc at which the camera was at its limit, 0 to 1. */
  readonly clippedShare: number;
  /** Where the search began. */
  readonly spot: LampSpot;
  /** Where it ended: the parameters of the fit in their order. */
  readonly parameters: Float64Array;
}

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
 * Fits the image of a round and of a square lamp in a polished ball and takes the better one.
 *
 * The lamp's mirror image on a sphere of known radius is a disc or square in surface-normal angle, blurred by the
 * camera; center, radius, height and blur are fitted together.
 *
 * @param crop - RGB raster around the ball in linear light.
 * @param ball - The ball's circle in the crop, radius > 6 px.
 * @param view - Unit vector from the ball to the camera.
 * @param before - A fit in nearly the same circle: the search begins there and keeps to its shape.
 * @returns The fit, or null when no highlight stands out of the dark glass.
 */
export function fitBallLamp(crop: Raster, ball: Circle, view: Vector, before?: LampFit): LampFit | null {
  return fitted(crop, ball, view, (sample, spot) => {
    if (before) return fitShape(sample, spot.peak, before.turnRad, before.parameters.slice(0, 6));
    const round = fitShape(sample, spot.peak, null, startOf(spot, ball));
    const square = fitShape(
      sample,
      spot.peak,
      bestTurn(sample, round.parameters),
      round.parameters.slice(0, 6),
    );
    return square.cost < SQUARE_GAIN * round.cost ? square : round;
  });
}

/** The same as if the lamp were round, which takes half the time: moves the ball's rim by some thousandths of its radius. */
export function fitRoundLamp(crop: Raster, ball: Circle, view: Vector): LampFit | null {
  return fitted(crop, ball, view, (sample, spot) => fitShape(sample, spot.peak, null, startOf(spot, ball)));
}

function fitted(
  crop: Raster,
  ball: Circle,
  view: Vector,
  shapeOf: (sample: DiscSample, spot: LampSpot) => ShapeFit,
): LampFit | null {
  const light = luminance(crop);
  const spot = lampSpot(light, ball);
  const sample = spot && discSample(light, ballFrame(ball, view), spot);
  if (!sample) return null;
  const { parameters, turnRad } = shapeOf(sample, spot);
  const inside = Math.PI * spot.radiusPx ** 2;
  const clipped = sample.measured.reduce((sum, value) => sum + (value >= sample.limit ? 1 : 0), 0);
  return {
    turnRad,
    center: sample.normalAt(parameters[ROW]!, parameters[COLUMN]!),
    sourceSlope: Math.exp(parameters[LN_SLOPE]!),
    height: Math.exp(parameters[LN_HEIGHT]!),
    blurPx: Math.exp(parameters[LN_BLUR]!),
    clippedShare: Math.min(1, clipped / inside),
    spot,
    parameters,
  };
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

/** Parameters at which the search begins. */
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
    xs: new Float32Array(fineCount),
    ys: new Float32Array(fineCount),
    whole: { fine: new Float32Array(fineCount), means: new Float64Array(side * side) },
    changed: { fine: new Float32Array(fineCount), means: new Float64Array(side * side) },
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
  readonly xs: Float32Array;
  readonly ys: Float32Array;
  /** The lamp drawn for the parameters at hand, and for those of which one was moved. */
  readonly whole: DrawnLamp;
  readonly changed: DrawnLamp;
  readonly normalAt: NormalAt;
}

/** Shares of the lamp's radiance: at every sample, and as the camera's pixels see it. */
interface DrawnLamp {
  readonly fine: Float32Array;
  readonly means: Float64Array;
}

/** Parameters of the fit by name: row and column of the lamp's middle, logarithms of its slope, height and blur, floor, turn. */
const [ROW, COLUMN, LN_SLOPE, LN_HEIGHT, LN_BLUR, FLOOR, TURN] = [0, 1, 2, 3, 4, 5, 6] as const;

/** Turn at which a square with the round lamp's size and place fits best. */
function bestTurn(sample: DiscSample, round: Float64Array): number {
  const { measured, changed } = sample;
  const height = Math.exp(round[LN_HEIGHT]!);
  const misfit = (turn: number) => {
    drawFine(round, sample, turn, changed.fine);
    blur(round, sample, changed.fine, changed.means);
    return changed.means.reduce(
      (sum, value, i) => sum + (round[FLOOR]! + height * value - measured[i]!) ** 2,
      0,
    );
  };
  const turns = Array.from({ length: 12 }, (_, k) => (k * Math.PI) / 24);
  const misfits = turns.map(misfit);
  return turns[misfits.indexOf(Math.min(...misfits))]!;
}

interface ShapeFit {
  readonly parameters: Float64Array;
  readonly cost: number;
  readonly turnRad: LampTurn;
}

/** Fits all parameters, the turn for a square lamp only. */
function fitShape(sample: DiscSample, peak: number, turn: LampTurn, start: ArrayLike<number>): ShapeFit {
  const { measured, limit } = sample;
  const sd = MEASURED_SD.radiance + MEASURED_SD.share * peak;
  const residuals: Residuals = (p, into, moved) => {
    const lamp = lampMeans(p, sample, turn !== null, moved);
    const height = Math.exp(p[LN_HEIGHT]!);
    for (let i = 0; i < measured.length; i++) {
      const model = p[FLOOR]! + height * lamp[i]!;
      const over = measured[i]! >= limit && model > measured[i]!;
      into[i] = over ? 0 : (model - measured[i]!) / sd;
    }
    into[measured.length] = (p[LN_BLUR]! - BLUR_PRIOR.mean) / BLUR_PRIOR.sd;
  };
  // Where most of the disc is clipped, height and blur cannot be told apart: the blur stays at the usual one.
  const clipped = measured.filter((value) => value >= limit).length;
  const isWashedOut = clipped > WASHED_OUT * measured.filter((value) => value >= 0.5 * peak).length;
  const steps = [0.05, 0.05, 0.02, 0.02, isWashedOut ? 0 : 0.02, 0.001, turn === null ? 0 : 0.02];
  const settings = { steps, maxIterations: 40, tolerance: 1e-5 };
  const from = [...Array.from(start), turn ?? 0];
  const { parameters, cost } = leastSquares(residuals, measured.length + 1, from, settings);
  const quarter = Math.PI / 2;
  const turnRad = turn === null ? null : ((parameters[TURN]! % quarter) + quarter) % quarter;
  return { parameters, cost, turnRad };
}

/** The lamp as the pixels see it; what the moved parameter leaves as it was is not drawn again. */
function lampMeans(
  p: Float64Array,
  sample: DiscSample,
  isSquare: boolean,
  moved: number | null,
): Float64Array {
  const { whole, changed } = sample;
  if (moved === LN_HEIGHT || moved === FLOOR) return whole.means;
  const into = moved === null ? whole : changed;
  if (moved !== LN_BLUR) drawFine(p, sample, isSquare ? p[TURN]! : null, into.fine);
  return blur(p, sample, moved === LN_BLUR ? whole.fine : into.fine, into.means);
}

function drawFine(p: Float64Array, sample: DiscSample, turnRad: LampTurn, into: Float32Array): void {
  const { xs, ys } = sample;
  slopesFrom(sample, sample.normalAt(p[ROW]!, p[COLUMN]!), 1 / Math.exp(p[LN_SLOPE]!));
  if (turnRad === null) roundLobes(xs, ys, NEARLY_MIRROR, into);
  else squareLobes(xs, ys, turnRad, NEARLY_MIRROR, into);
}

function blur(p: Float64Array, { side }: DiscSample, fine: Float32Array, into: Float64Array): Float64Array {
  const q = OVERSAMPLING;
  // On what is no ball the blur can run away; beyond half the window it changes nothing but the time taken.
  const sigma = Math.min(side / 2, Math.exp(p[LN_BLUR]!)) * q;
  blockMeans(fine, { width: side, height: side, q }, blockWeights(sigma, q), into);
  return into;
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
