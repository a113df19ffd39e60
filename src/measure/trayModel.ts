import { nthSmallest } from '../image/nthSmallest';
import type { Raster } from '../image/raster';
import { solveSymmetric } from './solveSymmetric';

/** The bare tray: smooth fields of light and color, and how far its own grain departs from them. */
export interface TrayModel {
  /** Quadratic surfaces of ln G, ln(R/G) and ln(B/G): factors of 1, x, y, x², xy, y²; see `surfaceAt`. */
  readonly surfaces: readonly [Float64Array, Float64Array, Float64Array];
  /** Usual size of departures (1.48 × median absolute deviation), of the lightness and of both colors together. */
  readonly lightnessSd: number;
  readonly chromaSd: number;
  /** Added to red, green and blue before logarithms, so that black does not reach −∞. */
  readonly floor: readonly [number, number, number];
}

/** What is added before logarithms: a share of the tray's own light, and about ten levels of an 8-bit photo in the dark, below which compression invents colors. */
const FLOOR = { share: 0.01, least: 0.003 };
const TERMS = 6;
const ROUNDS = 6;
/** Every so many pixels of every so many rows are plenty for six numbers and a median. */
const SAMPLE_STEP = 5;
/** Keeps surfaces flat where no tray is seen: penalty on slopes and bends, share of the samples. */
const FLATNESS = [1e-9, 5e-5, 5e-5, 8e-4, 8e-4, 8e-4] as const;
/** Width of the frame along the picture's edge that is taken for tray at first, share of the shorter side. */
const FRAME = 0.06;
/** Pieces into which each side of the frame is cut. */
const FRAME_PIECES = 6;
/** A corner begins this far from the middle, picture = 1. */
const CORNER = 0.5 - 1 / FRAME_PIECES;
/** Largest departure from the model, in ln units, that can still be tray: its texture, grain and dust. */
const WIDEST = 0.25;
/** Light may depart as many times more in the first rounds, until the lamp's falloff is followed. */
const WIDENED = [3, 2, 1.5];
const NARROWEST = 0.03;
/** Light and color that pieces of the frame may differ by and still be of one tray, ln units. */
const ALIKE = [0.5, 0.15, 0.15] as const;
/** A corner of the frame counts as much as so many of its other pieces: stones lie in the middle. */
const CORNER_WEIGHT = 3;

/** A pixel of the sampled picture: place in the unit frame of the surfaces, and ln G, ln(R/G), ln(B/G). */
interface Samples {
  readonly x: Float32Array;
  readonly y: Float32Array;
  readonly fields: readonly [Float32Array, Float32Array, Float32Array];
}

/**
 * Models the bare tray as a smooth field of light and color.
 *
 * Surfaces are fitted to the color that most of the picture's frame shares, then again and again to all pixels
 * that agree, so that stones on the edge and the lamp's falloff do no harm.
 *
 * @param small - RGB raster in linear light, slightly blurred.
 * @returns The tray's surfaces and its own spread.
 */
export function trayModel(small: Raster): TrayModel {
  const floor = floorOf(small);
  const samples = sampled(small, floor);
  let tray = commonFrame(samples, small.height / small.width);
  let surfaces = fittedSurfaces(samples, tray);
  let residuals = samples.fields.map((field, k) => residual(samples, field, surfaces[k]!));
  for (let round = 0; round < ROUNDS; round++) {
    const limits = residuals.map((field, k) => {
      const widest = k === 0 ? WIDEST * (WIDENED[round] ?? 1) : WIDEST;
      return Math.min(widest, Math.max(NARROWEST, 3 * spread(field, tray)));
    });
    tray = tray.map((_, i) => (residuals.every((field, k) => Math.abs(field[i]!) < limits[k]!) ? 1 : 0));
    surfaces = fittedSurfaces(samples, tray);
    residuals = samples.fields.map((field, k) => residual(samples, field, surfaces[k]!));
  }
  const [lightnessSd, redSd, blueSd] = residuals.map((field) => spread(field, tray));
  return {
    surfaces: surfaces as [Float64Array, Float64Array, Float64Array],
    lightnessSd: lightnessSd!,
    chromaSd: Math.hypot(redSd!, blueSd!),
    floor,
  };
}

/** A share of the median light of the picture's frame, channel by channel. */
function floorOf({ width, height, data }: Raster): [number, number, number] {
  const margin = Math.max(1, Math.round(FRAME * Math.min(width, height)));
  const parts = [0, 1, 2].map(() => new Float32Array(width * height)) as [
    Float32Array,
    Float32Array,
    Float32Array,
  ];
  let count = 0;
  for (let row = 0; row < height; row++) {
    const isEdgeRow = row < margin || row >= height - margin;
    for (let column = 0; column < width; column++) {
      // From the left margin on to the right one.
      if (!isEdgeRow && column === margin) column = Math.max(column, width - margin);
      const i = 3 * (row * width + column);
      for (let c = 0; c < 3; c++) parts[c]![count] = data[i + c]!;
      count++;
    }
  }
  return parts.map((part) => FLOOR.least + FLOOR.share * median(part.subarray(0, count))) as [
    number,
    number,
    number,
  ];
}

/** Value of a surface at a place in the picture, x and y from −½ to ½. */
export function surfaceAt(surface: Float64Array, x: number, y: number): number {
  // Asked for every pixel: by index, since taking the array apart costs more than the sum.
  const slopeX = surface[1]! + surface[3]! * x + surface[4]! * y;
  const slopeY = surface[2]! + surface[5]! * y;
  return surface[0]! + slopeX * x + slopeY * y;
}

/** Values of a surface along a row of the picture, one for each of its columns. */
export function surfaceRow(surface: Float64Array, y: number, into: Float64Array): void {
  const level = surface[0]! + (surface[2]! + surface[5]! * y) * y;
  const slope = surface[1]! + surface[4]! * y;
  const bend = surface[3]!;
  const width = into.length;
  for (let column = 0; column < width; column++) {
    const x = column / width - 0.5;
    into[column] = level + (slope + bend * x) * x;
  }
}

function sampled({ width, height, data }: Raster, [ofRed, ofGreen, ofBlue]: TrayModel['floor']): Samples {
  const columns = Math.ceil(width / SAMPLE_STEP);
  const count = columns * Math.ceil(height / SAMPLE_STEP);
  const [x, y, light, red, blue] = Array.from({ length: 5 }, () => new Float32Array(count));
  for (let k = 0; k < count; k++) {
    const column = SAMPLE_STEP * (k % columns);
    const row = SAMPLE_STEP * Math.floor(k / columns);
    const i = 3 * (row * width + column);
    x![k] = column / width - 0.5;
    y![k] = row / height - 0.5;
    light![k] = Math.log(data[i + 1]! + ofGreen);
    red![k] = Math.log(data[i]! + ofRed) - light![k]!;
    blue![k] = Math.log(data[i + 2]! + ofBlue) - light![k]!;
  }
  return { x: x!, y: y!, fields: [light!, red!, blue!] };
}

/** Pixels of the frame that share the color most of the frame has, pieces of the frame giving the colors tried. */
function commonFrame({ x, y, fields }: Samples, aspect: number): Uint8Array {
  const across = FRAME * Math.min(1, aspect);
  const down = FRAME * Math.min(1, 1 / aspect);
  const pieces = new Map<number, number[]>();
  const frame: number[] = [];
  const weights = new Uint8Array(x.length);
  for (let i = 0; i < x.length; i++) {
    if (Math.abs(x[i]!) < 0.5 - across && Math.abs(y[i]!) < 0.5 - down) continue;
    frame.push(i);
    const place = Math.floor((x[i]! + 0.5) * FRAME_PIECES) + 100 * Math.floor((y[i]! + 0.5) * FRAME_PIECES);
    const isCorner = Math.abs(x[i]!) > CORNER && Math.abs(y[i]!) > CORNER;
    weights[i] = isCorner ? CORNER_WEIGHT : 1;
    pieces.set(place, [...(pieces.get(place) ?? []), i]);
  }
  let common: number[] = frame;
  let most = 0;
  for (const piece of pieces.values()) {
    const color = fields.map((field) => median(Float32Array.from(piece, (i) => field[i]!)));
    const alike = frame.filter((i) =>
      fields.every((field, k) => Math.abs(field[i]! - color[k]!) < ALIKE[k]!),
    );
    const votes = alike.reduce((sum, i) => sum + weights[i]!, 0);
    if (votes > most) [common, most] = [alike, votes];
  }
  const tray = new Uint8Array(x.length);
  for (const i of common) tray[i] = 1;
  return tray;
}

/** Least-squares surfaces through the tray's samples, one for each field; what does not hang on the field is summed once. */
function fittedSurfaces({ x, y, fields }: Samples, tray: Uint8Array): Float64Array[] {
  const normal = new Float64Array(TERMS * TERMS);
  const rights = fields.map(() => new Float64Array(TERMS));
  const terms = Float64Array.of(1, 0, 0, 0, 0, 0);
  let count = 0;
  for (let i = 0; i < x.length; i++) {
    if (tray[i] === 0) continue;
    count++;
    terms[1] = x[i]!;
    terms[2] = y[i]!;
    terms[3] = x[i]! * x[i]!;
    terms[4] = x[i]! * y[i]!;
    terms[5] = y[i]! * y[i]!;
    for (let j = 0; j < TERMS; j++) {
      for (let k = 0; k <= j; k++) normal[j * TERMS + k]! += terms[j]! * terms[k]!;
    }
    for (let k = 0; k < rights.length; k++) {
      const right = rights[k]!;
      const value = fields[k]![i]!;
      for (let j = 0; j < TERMS; j++) right[j]! += terms[j]! * value;
    }
  }
  for (let j = 0; j < TERMS; j++) normal[j * TERMS + j]! += FLATNESS[j]! * count + 1e-9;
  return rights.map((right) => solveSymmetric(normal, right) ?? new Float64Array(TERMS));
}

function residual({ x, y }: Samples, field: Float32Array, surface: Float64Array): Float32Array {
  return field.map((value, i) => value - surfaceAt(surface, x[i]!, y[i]!));
}

function spread(field: Float32Array, tray: Uint8Array): number {
  const sizes = new Float32Array(field.length);
  let count = 0;
  for (let i = 0; i < field.length; i++) if (tray[i] === 1) sizes[count++] = Math.abs(field[i]!);
  return count === 0 ? NARROWEST : 1.4826 * median(sizes.subarray(0, count));
}

const median = (values: Float32Array) => nthSmallest(values, values.length >> 1) ?? 0;
