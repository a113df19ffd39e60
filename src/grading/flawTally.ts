import type { StepLimits } from './limits';
import type { MeasuredFlaw, MeasuredStone } from './measuredStone';

/** All flaws of one kind. */
export interface KindTally {
  readonly count: number;
  /** Of the largest: diameter or length, mm. */
  readonly largestMm: number;
  /** Diameters or lengths added up, mm. */
  readonly totalMm: number;
  /** Median width, mm; null where none was measured, as on anything but scratches. */
  readonly usualWidthMm: number | null;
}

export type FlawTally = Readonly<Record<MeasuredFlaw['kind'], KindTally>>;

/** Flaws seen for sure, and those together with the doubtful ones. */
export interface FlawTallies {
  readonly sure: FlawTally;
  readonly withDoubtful: FlawTally;
  /** Surface the flaws are spread over, cm². */
  readonly surfaceCm2: number;
}

/** Taken for a flaw that came without a size, mm. Our default. */
const SIZE_WHEN_UNKNOWN_MM = 0.5;

/**
 * Confidence from which a flaw is doubtful: a quarter of that from which it is sure. Our default; with less doubt more
 * stones over the limits were let go.
 */
export const doubtfulFrom = (sureFrom: number) => sureFrom / 4;

/**
 * Counts a stone's flaws by kind.
 *
 * @param stone - A measured stone; where nothing was inspected its outline's area stands in for the surface.
 * @param limits - The confidence from which a flaw is sure; from a quarter of it on it is doubtful, below it is left out.
 * @returns Sure flaws, and sure and doubtful ones together; the second never holds less than the first.
 */
export function flawTally(stone: MeasuredStone, limits: Pick<StepLimits, 'minFlawConfidence'>): FlawTallies {
  const from = limits.minFlawConfidence;
  return {
    sure: tally(stone.flaws.filter(({ confidence }) => confidence >= from)),
    withDoubtful: tally(stone.flaws.filter(({ confidence }) => confidence >= doubtfulFrom(from))),
    surfaceCm2: Math.max(0.01, stone.inspectedCm2 > 0 ? stone.inspectedCm2 : stone.areaMm2 / 100),
  };
}

function tally(flaws: readonly MeasuredFlaw[]): FlawTally {
  const ofKind = (kind: MeasuredFlaw['kind']): KindTally => {
    const own = flaws.filter((flaw) => flaw.kind === kind);
    const sizes = own.map(sizeMm);
    return {
      count: sizes.length,
      largestMm: Math.max(0, ...sizes),
      totalMm: sizes.reduce((sum, size) => sum + size, 0),
      usualWidthMm: usualWidthMm(own),
    };
  };
  return {
    pit: ofKind('pit'),
    fracture: ofKind('fracture'),
    chip: ofKind('chip'),
    scratch: ofKind('scratch'),
  };
}

/** Median width of flaws, mm; null where none was measured. */
export function usualWidthMm(flaws: readonly MeasuredFlaw[]): number | null {
  const widths = flaws
    .flatMap(({ widthMm }) => (widthMm === undefined ? [] : [widthMm]))
    .sort((a, b) => a - b);
  return widths[widths.length >> 1] ?? null;
}

function sizeMm({ diameterMm, lengthMm }: MeasuredFlaw): number {
  return diameterMm ?? lengthMm ?? SIZE_WHEN_UNKNOWN_MM;
}
