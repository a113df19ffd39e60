import type { FlawReport } from '../../analysis/report';
import { doubtfulFrom } from '../../grading/flawTally';

export interface SortedFlaws {
  readonly sure: readonly FlawReport[];
  /** Too faint to be sure of, but not to be ruled out. */
  readonly doubtful: readonly FlawReport[];
}

const sizeMm = ({ diameterMm, lengthMm }: FlawReport) => diameterMm ?? lengthMm ?? 0;

/**
 * Parts the flaws that count from those the photo is not sure of, the largest first.
 *
 * @param sureFrom - Confidence from which a flaw counts, 0 to 1; below a quarter of it a flaw is left out, as in grading.
 */
export function sortFlaws(flaws: readonly FlawReport[], sureFrom: number): SortedFlaws {
  const largestFirst = [...flaws].sort((one, other) => sizeMm(other) - sizeMm(one));
  return {
    sure: largestFirst.filter(({ confidence }) => confidence >= sureFrom),
    doubtful: largestFirst.filter(
      ({ confidence }) => confidence < sureFrom && confidence >= doubtfulFrom(sureFrom),
    ),
  };
}
