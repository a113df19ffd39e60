import type { StoneLoad } from './stoneLoad';

/** How full a machine is of the stones alone, as a share of its rated load. */
export interface Filling {
  readonly share: number;
  readonly shareLow: number;
  readonly shareHigh: number;
  /**
   * `full`: nothing is to be added; `add`: stones at the same step or ceramic media fill it up; `too-full`: some stones
   * have to wait.
   */
  readonly kind: 'full' | 'add' | 'too-full';
  /** To a full load: added when positive, taken out when negative, kg. */
  readonly missingKg: number;
}

/**
 * What a full load may differ by: a barrel is two thirds to three quarters full, so by a
 * seventeenth either way. Source: common practice.
 */
export const SLACK = (3 / 4 - 2 / 3) / (3 / 4 + 2 / 3);

/**
 * Compares stones with a machine's rated load.
 *
 * @param capacityKg - Null when the owner has not said it.
 * @returns Null without a load to compare with.
 */
export function filling(load: StoneLoad, capacityKg: number | null): Filling | null {
  if (capacityKg === null || !(capacityKg > 0 && Number.isFinite(capacityKg))) return null;
  const [share, shareLow, shareHigh] = [load.kg, load.kgLow, load.kgHigh].map((kg) => kg / capacityKg) as [
    number,
    number,
    number,
  ];
  const kind = share < 1 - SLACK ? 'add' : share > 1 + SLACK ? 'too-full' : 'full';
  return { share, shareLow, shareHigh, kind, missingKg: capacityKg - load.kg };
}
