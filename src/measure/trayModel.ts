import type { Raster } from '../image/raster';
import { solveSymmetric } from './solveSymmetric';

/** How each pixel differs from the bare tray that the model expects there. */
export interface TrayDifference {
  readonly width: number;
  readonly height: number;
  /** Linear green light, 0 to 1. */
  readonly light: Float32Array;
  /** ln(light / tray's light). */
  readonly lightness: Float32Array;
  /** ln(R/G) and ln(B/G) less the tray's. */
  readonly redGreen: Float32Array;
  readonly blueGreen: Float32Array;
  /** Usual size on the bare tray (1.48 × median absolute deviation), of the lightness and of both colors together. */
  readonly lightnessSd: number;
  readonly chromaSd: number;
}

/** Added to each channel before logarithms, so that black does not reach −∞. */
const FLOOR = 0.004;
/** Terms 1, x, y, x², xy, y². */
const TERMS = 6;
const ROUNDS = 6;
/** Width of the frame along the picture's edge that is taken for tray at first, share of the shorter side. */
const FRAME = 0.06;
/** Largest departure from the model, in ln units, that can still be tray: its texture, grain and dust. */
const WIDEST = 0.25;
const NARROWEST = 0.03;

/**
 * Models the bare tray as a smooth field of light and color, and measures how far each pixel departs from it.
 *
 * Quadratic surfaces of ln G, ln(R/G) and ln(B/G) are fitted to the frame of the picture, then again and
 * again to all pixels that agree, so that stones on the edge and the lamp's falloff do no harm.
 *
 * @param small - RGB raster in linear light, slightly blurred.
 * @returns Departures of every pixel and the tray's own spread.
 */
export function trayDifference(small: Raster): TrayDifference {
  const { width, height } = small;
  const count = width * height;
  const fields = logFields(small);
  let tray = frameAroundMedian(fields, width, height);
  let residuals = fields;
  for (let round = 0; round < ROUNDS; round++) {
    residuals = fields.map((field) => subtractSurface(field, tray, width, height));
    const limits = residuals.map((field) => Math.min(WIDEST, Math.max(NARROWEST, 3 * spread(field, tray))));
    const next = new Uint8Array(count);
    for (let i = 0; i < count; i++)
      next[i] = residuals.every((field, k) => Math.abs(field[i]!) < limits[k]!) ? 1 : 0;
    tray = next;
  }
  const [lightness, redGreen, blueGreen] = residuals as [Float32Array, Float32Array, Float32Array];
  return {
    width,
    height,
    light: fields[0]!.map((field) => Math.exp(field) - FLOOR),
    lightness,
    redGreen,
    blueGreen,
    lightnessSd: spread(lightness, tray),
    chromaSd: Math.hypot(spread(redGreen, tray), spread(blueGreen, tray)),
  };
}

function logFields(small: Raster): Float32Array[] {
  const count = small.width * small.height;
  const fields = [new Float32Array(count), new Float32Array(count), new Float32Array(count)];
  for (let i = 0; i < count; i++) {
    const [r, g, b] = [0, 1, 2].map((c) => Math.log(small.data[3 * i + c]! + FLOOR)) as [
      number,
      number,
      number,
    ];
    fields[0]![i] = g;
    fields[1]![i] = r - g;
    fields[2]![i] = b - g;
  }
  return fields;
}

function frameAroundMedian(fields: Float32Array[], width: number, height: number): Uint8Array {
  const margin = Math.max(2, Math.round(FRAME * Math.min(width, height)));
  const frame: number[] = [];
  for (let y = 0; y < height; y++) {
    const edgeRow = y < margin || y >= height - margin;
    for (let x = 0; x < width; x++)
      if (edgeRow || x < margin || x >= width - margin) frame.push(y * width + x);
  }
  const medians = fields.map((field) => median(Float32Array.from(frame, (i) => field[i]!)));
  const tray = new Uint8Array(width * height);
  for (const i of frame)
    tray[i] = fields.every((field, k) => Math.abs(field[i]! - medians[k]!) < 2 * WIDEST) ? 1 : 0;
  return tray;
}

/** The field less the quadratic surface that fits it best on the tray. */
function subtractSurface(field: Float32Array, tray: Uint8Array, width: number, height: number): Float32Array {
  const normal = new Float64Array(TERMS * TERMS);
  const right = new Float64Array(TERMS);
  const terms = new Float64Array(TERMS);
  // Every third pixel of every third row is plenty for six numbers.
  for (let y = 1; y < height; y += 3) {
    for (let x = 1; x < width; x += 3) {
      const i = y * width + x;
      if (tray[i] === 0) continue;
      surfaceTerms(x / width - 0.5, y / height - 0.5, terms);
      for (let j = 0; j < TERMS; j++) {
        right[j]! += terms[j]! * field[i]!;
        for (let k = 0; k <= j; k++) normal[j * TERMS + k]! += terms[j]! * terms[k]!;
      }
    }
  }
  for (let j = 0; j < TERMS; j++) normal[j * TERMS + j]! += 1e-6;
  const surface = solveSymmetric(normal, right) ?? new Float64Array(TERMS);
  const left = new Float32Array(field.length);
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      surfaceTerms(x / width - 0.5, y / height - 0.5, terms);
      let expected = 0;
      for (let j = 0; j < TERMS; j++) expected += surface[j]! * terms[j]!;
      left[i] = field[i]! - expected;
    }
  }
  return left;
}

function surfaceTerms(x: number, y: number, into: Float64Array): void {
  into[0] = 1;
  into[1] = x;
  into[2] = y;
  into[3] = x * x;
  into[4] = x * y;
  into[5] = y * y;
}

function spread(field: Float32Array, tray: Uint8Array): number {
  const sizes = field.filter((_, i) => tray[i] === 1).map(Math.abs);
  return sizes.length === 0 ? NARROWEST : 1.4826 * median(sizes);
}

const median = (values: Float32Array) => values.sort()[values.length >> 1] ?? 0;
