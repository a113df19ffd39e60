import type { MeasuredFlaw, MeasuredStone, RoughnessAtIndex } from '../../src/grading/measuredStone';

/** A sound stone of 30 × 24 mm, fully inspected, without a highlight unless one is given. */
export function measuredStone(part: Partial<MeasuredStone> = {}): MeasuredStone {
  return {
    id: 1,
    lengthMm: 30,
    widthMm: 24,
    areaMm2: 560,
    cutOff: false,
    highlight: null,
    glossBound: null,
    flaws: [],
    inspectedCm2: 5,
    ...part,
  };
}

/** A highlight of one roughness whatever the index, known to a share either way (10 % when left out). */
export function highlightOf(alpha: number, doubt = 0.1): { byIndex: RoughnessAtIndex[] } {
  const byIndex = [1.4, 1.54, 1.7].map((n) => {
    return { n, alpha, alphaLow: alpha / (1 + doubt), alphaHigh: alpha * (1 + doubt) };
  });
  return { byIndex };
}

/** So many pits of half a millimeter. */
export function pits(count: number, confidence = 0.9): MeasuredFlaw[] {
  return Array.from({ length: count }, () => ({ kind: 'pit', diameterMm: 0.5, confidence }));
}

/** A fracture of a length. */
export function fracture(lengthMm: number, confidence = 0.9): MeasuredFlaw {
  return { kind: 'fracture', lengthMm, confidence };
}
