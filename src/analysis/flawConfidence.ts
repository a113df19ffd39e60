import type { MarkSigns } from '../measure/markSigns';

/** All that a mark is judged by. */
export interface JudgedMark extends MarkSigns {
  /** The network's peak share of the mark's class, 0 to 1. */
  readonly peak: number;
  /** The largest share of a fracture within the mark. */
  readonly fractureShare: number;
  /** Diameter of the circle of equal area, mm. */
  readonly diameterMm: number;
  /** Places the mark covers. */
  readonly placeCount: number;
  /** Distance of its middle to the stone's outline, mm. */
  readonly rimMm: number;
}

/**
 * Weights of each sign in the log odds that a mark is a true flaw. The network alone takes too many specks and rings
 * for pits: a hollow is hardly darker than the skin around it, its color is the stone's, and it does not lean across
 * the lamp. Fitted by ridge logistic regression to the marks on seventeen development trays and four of them rendered
 * anew (598 pits, 204 chips, 209 fractures claimed), see DEVELOPERS.md. The bias of pits is lowered by 0.85 and that of
 * fractures by 0.4, that of chips raised by 0.32, so that what counts from one half on is right more often than nine
 * times in ten on trays left out.
 */
const WEIGHTS = {
  pit: {
    bias: 0.25,
    odds: 0.38,
    step: -6.33,
    across: -5.87,
    along: 0.88,
    size: 1.89,
    noise: -0.8,
    color: -0.7,
    sharpness: 1.42,
    fracture: -5.36,
    rim: 0.33,
    aspect: -0.76,
  },
  chip: { bias: -10.32, odds: 0.73, size: 1.92, rim: 0.76, step: -0.75, aspect: -0.74, sharpness: 6.93 },
  fracture: {
    bias: -1.86,
    odds: 0.79,
    places: 0.04,
    dark: 2.07,
    color: -0.45,
    sharpness: -0.35,
    rim: 0.07,
    noise: -0.04,
  },
} as const;
/** Share of the network from which a mark counts when nobody knows where the lamp is. Set on real surfaces looked at, see DEVELOPERS.md. */
const UNLIT_FROM = { pit: 0.75, chip: 0.75, fracture: 0.42 } as const;
/** Signs are bounded there, so that a rare extreme does not outweigh all else. */
const MOST = { color: 6, rimMm: 3 } as const;
const LEAST_NOISE = 0.02;

/**
 * How sure a mark of the flaw network is a flaw.
 *
 * @param kind - Class of the mark.
 * @param mark - Its signs.
 * @param knowsLamp - Whether the lamp's direction is known; without it only the network's share tells.
 * @returns 0 to 1: on trays like those it was fitted to, the share of such marks that are flaws.
 */
export function flawConfidence(kind: keyof typeof WEIGHTS, mark: JudgedMark, knowsLamp: boolean): number {
  if (!knowsLamp) return unlit(kind, mark.peak);
  const signs = signsOf(mark);
  const odds = Object.entries(WEIGHTS[kind]).reduce(
    (sum, [name, weight]) => sum + weight * signs[name as keyof typeof signs],
    0,
  );
  return 1 / (1 + Math.exp(-odds));
}

/** 0.5 at the share from which a kind counts, with log odds that grow as the share's do. */
function unlit(kind: keyof typeof WEIGHTS, peak: number): number {
  const odds = (share: number) => share / Math.max(1e-6, 1 - share);
  const ratio = odds(peak) / odds(UNLIT_FROM[kind]);
  return ratio / (1 + ratio);
}

function signsOf(mark: JudgedMark) {
  return {
    bias: 1,
    odds: Math.log(mark.peak / (1 - mark.peak + 1e-6)),
    step: Math.abs(mark.contrast),
    dark: -mark.contrast,
    across: Math.abs(mark.across),
    along: mark.along,
    size: Math.log(mark.diameterMm),
    places: Math.log(mark.placeCount),
    noise: Math.log(mark.ringNoise + LEAST_NOISE),
    color: Math.min(MOST.color, mark.colorStep),
    sharpness: mark.sharpness,
    fracture: mark.fractureShare,
    rim: Math.min(MOST.rimMm, mark.rimMm),
    aspect: Math.log(mark.aspect),
  };
}
