import type { PhotoReport } from '../analysis/report';
import type { PlaceMark, Warning, WarningCode } from '../image/notice';
import { stoneBox } from './stoneBox';

/** A warning with the letter and the places that show it in the picture. */
export interface LetteredWarning {
  readonly code: WarningCode;
  readonly letter: string;
  /** Places and stones it is about, photo pixels. */
  readonly places: readonly PlaceMark[];
}

/**
 * Letters for the warnings that are about a place: A for the first, and so on in their order.
 *
 * @param report - Warnings, and the stones that they name.
 * @returns Only warnings that can be pointed at.
 */
export function warningLetters({
  warnings,
  stones,
}: Pick<PhotoReport, 'warnings' | 'stones'>): LetteredWarning[] {
  return warnings
    .map((warning) => ({ code: warning.code, places: placesOf(warning, stones) }))
    .filter(({ places }) => places.length > 0)
    .map((warning, index) => ({ ...warning, letter: String.fromCharCode(65 + (index % 26)) }));
}

function placesOf(warning: Warning, stones: PhotoReport['stones']): PlaceMark[] {
  const named = stones.filter(({ id }) => warning.stones?.includes(id));
  const around = named.map(({ outline }) => {
    const { row, column, width, height } = stoneBox(outline);
    return { row: row + height / 2, column: column + width / 2, radiusPx: Math.hypot(width, height) / 2.6 };
  });
  return [...(warning.marks ?? []), ...around];
}
