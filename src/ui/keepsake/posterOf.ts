import { adviceAt } from '../../history/adviceAt';
import type { BatchHistory, Face } from '../../history/batchHistory';
import type { BatchPoster } from '../../picture/batchPoster';

/** What the poster says, and the photographs that go into it, one for each stone. */
export interface PosterWithFaces {
  readonly poster: BatchPoster;
  readonly faces: readonly Face[];
}

/** The poster of a batch: every stone as its last check shows it. Null when none was checked. */
export function posterOf({ batch, checks, stones }: BatchHistory): PosterWithFaces | null {
  const seen = stones.flatMap(({ stone, checks: own }) => {
    const last = own.at(-1);
    return last ? [{ stone, last, face: last.faces[0] }] : [];
  });
  const lastDay = checks.at(-1)?.check.day;
  if (seen.length === 0 || lastDay === undefined) return null;
  return {
    poster: {
      name: batch.name,
      startedOn: batch.startedOn,
      lastDay,
      checkCount: checks.length,
      stones: seen.map(({ stone, last, face }) => ({
        stone: { outline: face.stone.outline, mmPerPx: face.photo.mmPerPx },
        name: stone.name,
        isFavorite: stone.isFavorite,
        action: last.decision ?? adviceAt(last),
      })),
    },
    faces: seen.map(({ face }) => face),
  };
}
