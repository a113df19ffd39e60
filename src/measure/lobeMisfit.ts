import type { HighlightFit, HighlightProblem } from './highlightFit';

/** A lobe stands out down to this share of its height. */
const STANDS_OUT = 0.1;

/**
 * What a fitted lobe leaves over where it stands out, share of the lobe: its shape is wrong by about as much.
 *
 * @param found - The problem and its fit.
 * @returns Root mean square of the residual over that of the lobe, ≥ 0; 0 where no lobe stands out.
 */
export function lobeMisfit({
  problem: { window },
  fit,
}: {
  readonly problem: HighlightProblem;
  readonly fit: HighlightFit;
}): number {
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
