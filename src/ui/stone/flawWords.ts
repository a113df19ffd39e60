import type { FlawReport } from '../../analysis/report';
import { lengthWords } from '../../texts/measures';
import { texts } from '../../texts/speech';

/**
 * A flaw in words: kind, size, and what a second photo told of it.
 *
 * @param isUncertain - Whether the photo is not sure of it.
 * @returns Such as "Pit, 0.9 mm across" or "Fracture, 6.2 mm long".
 */
export function flawWords(flaw: FlawReport, isUncertain = false): string {
  const { stone, verdicts } = texts();
  const size = (mm: number | undefined, decimals: number) =>
    mm === undefined ? null : lengthWords(mm, decimals);
  return stone.flaw({
    title: verdicts.flawTitles[flaw.kind],
    across: size(flaw.diameterMm, 1),
    long: size(flaw.lengthMm, 1),
    wide: size(flaw.widthMm, 2),
    followsLamp: flaw.followsLamp ?? null,
    isUncertain,
  });
}
