import type { FlawReport } from '../../src/analysis/report';
import type { TrueFlaw } from './truth';

export interface FlawScore {
  truePits: number;
  foundPits: number;
  falsePits: number;
  trueFractures: number;
  foundFractures: number;
  falseFractures: number;
}

export const NO_FLAWS: FlawScore = {
  truePits: 0,
  foundPits: 0,
  falsePits: 0,
  trueFractures: 0,
  foundFractures: 0,
  falseFractures: 0,
};

/** Confidence from which a flaw counts as claimed. */
const CLAIMED = 0.5;
/** A claim belongs to a flaw within its radius plus this, mm. */
const NEAR_MM = 0.6;

/**
 * Compares claimed flaws with true ones on one stone.
 *
 * Pits and chips are one class here, holes; a fracture is found when a claimed fracture lies on its path, and
 * a claim on any true flaw of another kind, or on one that hardly faces the camera, is neither right nor wrong.
 */
export function scoreFlaws(
  claims: readonly FlawReport[],
  truths: readonly TrueFlaw[],
  mmPerPx: number,
): FlawScore {
  const claimed = claims.filter((claim) => claim.confidence >= CLAIMED);
  const isHole = (kind: string) => kind === 'pit' || kind === 'chip';
  const score = { ...NO_FLAWS };
  for (const truth of truths.filter((flaw) => flaw.visible)) {
    const hit = claimed.some(
      (claim) =>
        isHole(claim.kind) === isHole(truth.kind) && distanceMm(claim, truth, mmPerPx) < nearMm(truth),
    );
    if (isHole(truth.kind)) {
      score.truePits++;
      if (hit) score.foundPits++;
    } else {
      score.trueFractures++;
      if (hit) score.foundFractures++;
    }
  }
  for (const claim of claimed) {
    const onFlaw = truths.some((truth) => distanceMm(claim, truth, mmPerPx) < nearMm(truth));
    if (onFlaw) continue;
    if (isHole(claim.kind)) score.falsePits++;
    else score.falseFractures++;
  }
  return score;
}

const nearMm = (truth: TrueFlaw) => NEAR_MM + (truth.diameterMm ?? 0) / 2;

function distanceMm(claim: FlawReport, truth: TrueFlaw, mmPerPx: number): number {
  const points = truth.path ?? [[truth.row, truth.column] as const];
  return (
    mmPerPx * Math.min(...points.map(([row, column]) => Math.hypot(claim.row - row, claim.column - column)))
  );
}
