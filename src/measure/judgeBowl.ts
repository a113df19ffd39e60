import type { StoneBowl } from './stoneBowls';

/** Evidence of one sign: points of log odds at given values, in between linear, beyond them constant. */
type Evidence = readonly (readonly [value: number, points: number])[];

/**
 * Points were fitted (penalized logistic regression, piecewise linear) to the true pits and chips and to the
 * patterns of the four sample pictures and of the development scenes (seeds 1, 21, 22 and 101). Scene left
 * out by scene, claims at 0.5 were right in two of three cases and those from 0.25 to 0.5 in one of four.
 */
const START = -4.7;

/** Darkening of the shaded side, ln units: faint marks and marks darker than a shallow bowl's shade are no pits. */
const SHADE: Evidence = [
  [0.11, -1.6],
  [0.17, -0.45],
  [0.31, 0.5],
  [0.43, 0.95],
  [0.63, 0.65],
  [0.9, -0.6],
];
/** ln of the gain of a bowl lit from the lamp's side over that of a flat spot: a pit is shaded, a speck is flat. */
const LIT: Evidence = [
  [0, -1],
  [0.07, -0.15],
  [0.19, 0.15],
  [0.32, 0.25],
  [0.43, 0.75],
];
/** Share of the variance around that the bowl explains. */
const EXPLAINED: Evidence = [
  [0.2, -1.55],
  [0.3, -0.95],
  [0.46, 0],
  [0.65, 0.75],
  [0.75, 0.9],
];
/** ln of what the fit leaves (plus 0.01): unrest around is pattern. */
const REST: Evidence = [
  [-3.2, 0],
  [-2.8, 0.55],
  [-2.4, 0.65],
  [-2.05, 0.4],
  [-1.7, -0.3],
  [-1.3, -1.35],
];
/** Darkest third as a share of the surroundings, linear light: fill light reaches into every open pit. */
const DARKEST: Evidence = [
  [0.15, -1.5],
  [0.27, -0.9],
  [0.33, -0.15],
  [0.53, 0.4],
  [0.63, 0.7],
  [0.74, 0.6],
  [0.91, -0.6],
];
/** ln of the distance from the hues that shade and dust allow (plus 0.003). */
const HUE: Evidence = [
  [-5.8, 1.15],
  [-5.15, 1.05],
  [-4.67, 0.3],
  [-3.2, -0.95],
  [-1.85, -1.55],
];
/** ln of the number of others alike in size, strength and color per cm² (plus 1): pattern repeats. */
const ALIKE: Evidence = [
  [0, 1.9],
  [0.43, 1.35],
  [0.84, 0.25],
  [2.9, -1.4],
  [3.4, -2.15],
];
/** ln of the radius in mm: the smallest spots are mostly grain. */
const RADIUS: Evidence = [
  [-1.7, -2.8],
  [-1.3, -0.85],
  [-0.9, 0.55],
  [-0.5, 1.15],
  [0, 1.1],
  [0.13, 0.8],
];

/**
 * How likely a dark spot is a hole rather than a mark of color.
 *
 * @param bowl - The spot with all that was measured.
 * @param mmPerPx - Scale.
 * @returns 0 to 1.
 */
export function judgeBowl({ fit, color, crowd }: StoneBowl, mmPerPx: number): number {
  const odds =
    START +
    points(SHADE, fit.dark + 0.5 * Math.max(0, fit.fall)) +
    points(LIT, Math.log((fit.gain + 3) / (fit.flatGain + 3))) +
    points(EXPLAINED, fit.explained) +
    points(REST, Math.log(fit.rest + 0.01)) +
    points(DARKEST, color.darkest) +
    points(HUE, Math.log(color.hueOff + 0.003)) +
    points(ALIKE, Math.log1p(crowd.alikePerCm2)) +
    points(RADIUS, Math.log(fit.radiusPx * mmPerPx));
  return 1 / (1 + Math.exp(-odds));
}

function points(evidence: Evidence, value: number): number {
  const after = evidence.findIndex(([at]) => at >= value);
  if (after === 0) return evidence[0]![1];
  if (after < 0) return evidence[evidence.length - 1]![1];
  const [a, b] = [evidence[after - 1]!, evidence[after]!];
  return a[1] + ((value - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
}
