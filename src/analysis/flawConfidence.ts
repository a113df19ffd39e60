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
 * the lamp. Fitted by ridge logistic regression to the marks on nine development trays and four of them rendered
 * anew (307 pits, 133 chips, 151 fractures claimed), see DEVELOPERS.md. The bias of pits is lowered by 0.75 and that of
 * fractures by 0.3, so that what counts from one half on is right more often than nine times in ten on trays left out.
 */
const WEIGHTS = {
  pit: {
    bias: 0.27,
    odds: 0.46,
    step: -5.93,
    across: -4.13,
    along: -0.2,
    size: 1.71,
    noise: -0.76,
    color: -0.5,
    sharpness: 0.67,
    fracture: -4.89,
    rim: 0.38,
    aspect: -0.19,
  },
  chip: {
    bias: -11.5,
    odds: 0.63,
    size: 2.24,
    rim: 0.77,
    step: -0.14,
    aspect: -0.6,
    sharpness: 7.17,
    color: 0.18,
  },
  fracture: {
    bias: -2.92,
    odds: 0.77,
    places: 0.22,
    dark: 1.65,
    color: -0.32,
    sharpness: 1.07,
    rim: -0.12,
    noise: 0.12,
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
