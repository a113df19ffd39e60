import type { Stay } from './stay';

/** From this time on this share has left. */
export interface LeavingStep {
  readonly time: number;
  /** 0 to 1. */
  readonly share: number;
}

/**
 * Share that has left by each time, with those that still wait counted as long as they were seen.
 *
 * The Aalen–Johansen estimate; where nothing was given up it is one minus Kaplan and Meier's. What was given up
 * never leaves, and so holds the share down for good.
 *
 * @param stays - In any order.
 * @returns Times at which something left, rising, each with the share from then on.
 * @see Kaplan & Meier 1958; Aalen & Johansen 1978.
 */
export function leaving(stays: readonly Stay[]): LeavingStep[] {
  const sorted = [...stays].sort((a, b) => a.time - b.time);
  const steps: LeavingStep[] = [];
  let [share, still] = [0, 1];
  for (let from = 0; from < sorted.length; ) {
    const time = sorted[from]?.time ?? 0;
    const atRisk = sorted.length - from;
    let [left, givenUp] = [0, 0];
    for (; sorted[from]?.time === time; from++) {
      if (sorted[from]?.end === 'left') left++;
      if (sorted[from]?.end === 'given up') givenUp++;
    }
    share += (still * left) / atRisk;
    still *= 1 - (left + givenUp) / atRisk;
    if (left > 0) steps.push({ time, share });
  }
  return steps;
}

/** Rounding in a sum of shares. */
const NEARLY = 1e-9;

/** Time by which a share has left; null when so many never did. */
export function timeUntil(steps: readonly LeavingStep[], share: number): number | null {
  return steps.find((step) => step.share >= share - NEARLY)?.time ?? null;
}
