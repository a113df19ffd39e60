import { type HighlightFit, type HighlightProblem, refit } from './highlightFit';
import type { HighlightWindow, LobeOptics } from './highlightModel';

/** Ends of an interval of roughness. */
export interface RoughnessInterval {
  readonly low: number;
  readonly high: number;
}

/** Cost that a roughness may exceed the best by: 90 % of χ² with one degree of freedom (1.645²). */
const COST_RISE = 2.706;
/** Search steps in ln α, and how many are taken to each side. */
const LOG_STEP = 0.2;
const MOST_STEPS = 14;
const RANGE = { least: 0.0015, most: 0.8 };
/** What the model itself is wrong by: lobe shape, uneven curvature (from the development scenes), ln α. */
const MODEL_SD = 0.16;
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
    let inside = 0;
    let rise = 0;
    for (let step = 1; step <= MOST_STEPS; step++) {
      const alpha = fit.shape.alpha * Math.exp(direction * LOG_STEP * step);
      if (alpha < RANGE.least || alpha > RANGE.most) return LOG_STEP * step;
      const nextRise = costAt(alpha) - best;
      if (nextRise > COST_RISE) {
        // The cost grows about as the square of the distance.
        const [from, to] = [Math.sqrt(Math.max(0, rise)), Math.sqrt(nextRise)];
        return LOG_STEP * (inside + (Math.sqrt(COST_RISE) - from) / Math.max(1e-9, to - from));
      }
      inside = step;
      rise = nextRise;
    }
    return LOG_STEP * MOST_STEPS;
  };
  const blur = blurSd(problem.optics, fit);
  const widen = (side: number) => Math.hypot(side, 1.645 * MODEL_SD, 1.645 * blur);
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
