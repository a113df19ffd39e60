import { type HighlightFit, type HighlightProblem, refit } from './highlightFit';
import type { HighlightWindow, LobeOptics } from './highlightModel';

/** Ends of an interval of roughness. */
export interface RoughnessInterval {
  readonly low: number;
  readonly high: number;
}

/** Cost that a roughness may exceed the best by: 90 % of χ² with one degree of freedom (1.645²). */
const COST_RISE = 2.706;
/** Half of a 90 % interval of a normal distribution, standard deviations. */
const NORMAL_90 = 1.645;
/** Distances from the best ln α that are tried, ln units. */
const DISTANCES = [0.15, 0.3, 0.55, 0.9, 1.4, 2.1, 3];
const RANGE = { least: 0.0015, most: 0.8 };
/** What the model itself is wrong by: lobe shape, uneven curvature (from the development scenes), ln α. */
const MODEL_SD = 0.16;
/** A lobe stands out down to this share of its height. */
const STANDS_OUT = 0.1;
/** Spread of the measured camera blur, share of it; it enters where the edge of a near-mirror is read. */
const BLUR_SD = 0.25;

/**
 * 90 % interval of the roughness, from how much worse the fit becomes when the roughness is held elsewhere.
 *
 * Pixels of stone pattern hang together, so the cost is scaled to the number of independent residuals.
 *
 * @param problem - What was fitted.
 * @param fit - The best fit.
 * @returns Interval that contains the fit's roughness.
 */
export function roughnessInterval(problem: HighlightProblem, fit: HighlightFit): RoughnessInterval {
  const independent = independentShare(problem.window, fit);
  const costAt = (alpha: number) => refit(problem, fit, alpha).cost * independent;
  const best = fit.cost * independent;
  const toEnd = (direction: 1 | -1) => {
    let inside = { distance: 0, root: 0 };
    for (const distance of DISTANCES) {
      const alpha = fit.shape.alpha * Math.exp(direction * distance);
      if (alpha < RANGE.least || alpha > RANGE.most) return distance;
      const root = Math.sqrt(Math.max(0, costAt(alpha) - best));
      // The cost grows about as the square of the distance.
      const share = (Math.sqrt(COST_RISE) - inside.root) / (root - inside.root);
      if (root > Math.sqrt(COST_RISE)) return inside.distance + share * (distance - inside.distance);
      inside = { distance, root };
    }
    return inside.distance;
  };
  const blur = blurSd(problem.optics, fit);
  const model = Math.hypot(MODEL_SD, blur, misfit(problem.window, fit));
  const widen = (side: number) => Math.hypot(side, NORMAL_90 * model);
  return {
    low: Math.max(RANGE.least, fit.shape.alpha * Math.exp(-widen(toEnd(-1)))),
    high: Math.min(1, fit.shape.alpha * Math.exp(widen(toEnd(1)))),
  };
}

/** Error of ln α from the error of the blur: widths add in quadrature, α² + (blur · curvature)². */
function blurSd(optics: LobeOptics, fit: HighlightFit): number {
  const blurSlope = optics.blurPx * Math.exp(fit.shape.mean);
  return Math.min(1.5, (BLUR_SD * blurSlope * blurSlope) / (fit.shape.alpha * fit.shape.alpha));
}

/** What the lobe leaves over where it stands out, share of the lobe: its shape is then wrong by about as much. */
function misfit(window: HighlightWindow, fit: HighlightFit): number {
  const highest = fit.lobe.reduce((most, value) => Math.max(most, value), 0);
  let left = 0;
  let lobe = 0;
  for (let i = 0; i < fit.lobe.length; i++) {
    if (window.use[i] !== 1 || fit.lobe[i]! < STANDS_OUT * highest) continue;
    left += (window.values[i]! - fit.body[i]! - fit.amplitude * fit.lobe[i]!) ** 2;
    lobe += (fit.amplitude * fit.lobe[i]!) ** 2;
  }
  return lobe > 0 ? Math.sqrt(left / lobe) : 0;
}

/** Share of the residuals that are independent, from the correlation of neighbors. */
function independentShare(window: HighlightWindow, fit: HighlightFit): number {
  const left = window.values.map((value, i) => value - fit.body[i]! - fit.amplitude * fit.lobe[i]!);
  const share = (offset: number) => {
    let product = 0;
    let square = 0;
    for (let i = 0; i + offset < left.length; i++) {
      const w = fit.weights[i]! * fit.weights[i + offset]!;
      product += w * left[i]! * left[i + offset]!;
      square += (w * (left[i]! ** 2 + left[i + offset]! ** 2)) / 2;
    }
    const correlation = square > 0 ? Math.min(0.95, Math.max(0, product / square)) : 0;
    return (1 - correlation) / (1 + correlation);
  };
  return share(1) * share(window.width);
}
