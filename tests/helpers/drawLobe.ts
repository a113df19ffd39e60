import type { HighlightProblem } from '../../src/measure/highlightFit';
import { normalize } from '../../src/optics/vector';
import { lampAt } from './drawnLamp';
import { normalNoise } from './normalNoise';
import { pointSpread } from './pointSpread';
import { mirrored, roughGloss } from './roughMirror';

const SIDE = 41;
const FINE = 3;
const INDEX = 1.54;
const LAMP = lampAt(0, 0, 12, 16);
const BLUR_PX = 0.8;

/** A highlight on a paraboloid under a lamp beside the camera. */
export interface DrawnLobe {
  readonly alpha: number;
  /** Half-height radius of the lobe, roughly, pixels; sets the curvature. */
  readonly radiusPx?: number;
  /** Curvature along the longer axis of the highlight over that across. */
  readonly evenness?: number;
  /** Turn of the longer axis to the left, degrees. */
  readonly turnDeg?: number;
  /** The stone's own light by x and y from the middle, −1 to 1. */
  readonly body?: (x: number, y: number) => number;
  /** Slope of the skin beside that of the paraboloid, right and up, by pixels right and up from the lobe's center. */
  readonly skin?: (right: number, up: number) => readonly [number, number];
  /** Share of a perfect mirror's light that the skin sends there, by pixels right and up from the lobe's center. */
  readonly polish?: (right: number, up: number) => number;
  /** Factor on all light. */
  readonly exposure?: number;
  /** Standard deviation of the noise, radiance. */
  readonly noise?: number;
}

/** Half-vector radius of the drawn lamp. */
export const LOBE_LAMP_SLOPE = Math.tan((12 * Math.PI) / 720);

/** Draws the highlight by summing Walter et al. 2007, eq. 20, over the lamp, and states what is known about it. */
export function drawLobe(drawn: DrawnLobe): HighlightProblem {
  const { alpha, radiusPx = 7, evenness = 0.7, turnDeg = 30, exposure = 1, noise = 0 } = drawn;
  const gloss = roughGloss(LAMP, INDEX, alpha);
  // A lobe much wider than the lamp halves at 0.64 α, one much narrower at the lamp's rim.
  const mean = Math.hypot(0.64 * alpha, LOBE_LAMP_SLOPE) / radiusPx;
  const [along, across] = [mean * Math.sqrt(evenness), mean / Math.sqrt(evenness)];
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const fine = Float64Array.from({ length: (SIDE * FINE) ** 2 }, (_, i) => {
    const x = ((i % (SIDE * FINE)) + 0.5) / FINE - SIDE / 2 - 0.3;
    const y = SIDE / 2 - (Math.floor(i / (SIDE * FINE)) + 0.5) / FINE - 0.2;
    const [u, v] = [along * (cos * x + sin * y), across * (-sin * x + cos * y)];
    const [right, up] = drawn.skin?.(x, y) ?? [0, 0];
    const normal = normalize([cos * u - sin * v + right, sin * u + cos * v + up, 1]);
    return gloss(normal) * (drawn.polish?.(x, y) ?? 1);
  });
  const soft = pointSpread(fine, SIDE * FINE, SIDE * FINE, BLUR_PX * FINE);
  const random = normalNoise(7);
  const values = Float64Array.from({ length: SIDE * SIDE }, (_, i) => {
    const [row, column] = [Math.floor(i / SIDE), i % SIDE];
    let sum = 0;
    for (let k = 0; k < FINE * FINE; k++) {
      sum += soft[(row * FINE + Math.floor(k / FINE)) * SIDE * FINE + column * FINE + (k % FINE)]!;
    }
    const body = drawn.body?.((2 * column) / (SIDE - 1) - 1, 1 - (2 * row) / (SIDE - 1)) ?? 0;
    return exposure * (sum / (FINE * FINE) + body) + noise * random();
  });
  return {
    window: {
      width: SIDE,
      height: SIDE,
      stepPx: 1,
      row: 0,
      column: 0,
      values,
      use: new Uint8Array(SIDE * SIDE).fill(1),
    },
    optics: { sourceSlope: LOBE_LAMP_SLOPE, lampTurnRad: null, blurPx: BLUR_PX, half: null, oversampling: 2 },
    prior: {
      amplitude: exposure * LAMP.radiance * mirrored(INDEX, 1),
      amplitudeSd: 0.05,
      curvatureMean: Math.log(mean),
      curvatureSd: 0.7,
      leastBody: 0,
    },
  };
}
