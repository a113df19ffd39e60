import type { GlossRow } from './glossRow';
import { placeInOrder, readable } from './glossScores';
import { groupedBy } from './groupedBy';
import { rankCorrelation } from './rankCorrelation';

/** Within one photo the order of fewer stones than this says little. */
const FEWEST_STONES = 5;

/**
 * How well three scores order the same stones of the same photos: ours and two plain ones.
 *
 * Positive where a score puts glossier stones first, as it should; 0 where it puts all of a photo's stones level.
 * All stones count: one without a number is put last, and the plain scores always have one. Within one photo scale,
 * lamp and exposure are the same for all stones, which favors the plain scores.
 */
export function sideBySide(rows: readonly GlossRow[]): string[] {
  const stones = readable(rows);
  const photos = [...groupedBy(stones, ({ photoPath }) => photoPath).values()].filter(
    (group) => group.length >= FEWEST_STONES,
  );
  const line = (name: string, scoreOf: (row: GlossRow) => number) => {
    const within = photos.map((group) => order(group, scoreOf) || 0);
    const mean = within.reduce((sum, rank) => sum + rank, 0) / within.length;
    return `  ${name.padEnd(40)}${order(stones, scoreOf).toFixed(3).padStart(10)}${mean.toFixed(3).padStart(18)}`;
  };
  return [
    '',
    `Spearman with true α, ${stones.length} stones`.padEnd(42) + 'all photos   mean of a photo'.padStart(28),
    line('estimated roughness', placeInOrder),
    line('brightest gradient', ({ gradientScore }) => -(gradientScore ?? 0)),
    line('area of the highlight', ({ areaScore }) => -(areaScore ?? 0)),
  ];
}

function order(rows: readonly GlossRow[], scoreOf: (row: GlossRow) => number): number {
  return rankCorrelation(
    rows.map(scoreOf),
    rows.map(({ alpha }) => alpha),
  );
}
