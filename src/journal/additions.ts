import type { RecordId } from './records';

/** A piece of what was added at one time, as the journal notes it. */
export interface Addition {
  /** `TIME.PIECE.PIECES`: what was added together has the same TIME, a ULID, so that it is known whether all of it is there. */
  readonly id: string;
  readonly records: readonly RecordId[];
  /** Keys of photos. */
  readonly photos: readonly string[];
}

/** Most of each in one piece, so that no piece is large. */
const [MOST_RECORDS, MOST_PHOTOS] = [128, 32];

/** Notes what was added together, in pieces; nothing for nothing. */
export function additionsOf(
  time: RecordId,
  records: readonly RecordId[],
  photos: readonly string[],
): Addition[] {
  const count = Math.max(Math.ceil(records.length / MOST_RECORDS), Math.ceil(photos.length / MOST_PHOTOS));
  return Array.from({ length: count }, (_, i) => ({
    id: `${time}.${i + 1}.${count}`,
    records: records.slice(i * MOST_RECORDS, (i + 1) * MOST_RECORDS),
    photos: photos.slice(i * MOST_PHOTOS, (i + 1) * MOST_PHOTOS),
  }));
}

/**
 * Which of these pieces belong to additions that are there as a whole.
 *
 * @param present - Ids of all pieces that are there.
 */
export function ofWholeAdditions(ids: readonly string[], present: ReadonlySet<string>): string[] {
  return ids.filter((id) => {
    const [time, , count] = id.split('.');
    const pieces = Array.from({ length: Number(count) || 0 }, (_, i) => `${time}.${i + 1}.${count}`);
    return pieces.length > 0 && pieces.every((piece) => present.has(piece));
  });
}
