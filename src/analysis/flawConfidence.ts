/** Peak share of the network at which a mark of each kind counts as a flaw; a choice, see DEVELOPERS.md. */
const CLAIMED_FROM = { pit: 0.15, fracture: 0.5, chip: 0.7 } as const;

/**
 * How sure a mark of the flaw network is a flaw: 0.5 at the share from which the kind counts, and with log odds
 * that grow as the share's do.
 *
 * @param kind - Class of the mark.
 * @param peak - Peak share of the mark, 0 to 1.
 * @returns 0 to 1.
 */
export function flawConfidence(kind: keyof typeof CLAIMED_FROM, peak: number): number {
  const odds = (share: number) => share / Math.max(1e-6, 1 - share);
  const ratio = odds(peak) / odds(CLAIMED_FROM[kind]);
  return ratio / (1 + ratio);
}
