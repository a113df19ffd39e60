import { madeAt } from '../journal/recordId';
import type { RecordId } from '../journal/records';

/** What would be lost with this browser's storage. */
export interface AtStake {
  /** Photos kept since the journal was last saved to a file. */
  readonly photos: number;
  /** When the first of them was kept, ms since 1970; null without any. */
  readonly sinceMs: number | null;
  /** How plainly to say it: nothing to say, a line in small print, a note, a note that cannot be missed. */
  readonly level: 'nothing' | 'little' | 'much' | 'most';
}

const DAY_MS = 86_400_000;

/** From so many photos, or from a few so many days old, a level is reached: our own choice, a tray a week in mind. */
const LEVELS = [
  { level: 'most', photos: 50, days: 120 },
  { level: 'much', photos: 10, days: 30 },
] as const;
/** Fewer can be photographed and kept again, whatever their age. */
const FEW = 3;

/**
 * How much lies in this browser alone.
 *
 * @param checkIds - Of every check's records, one for each photo, in order.
 * @param savedUpTo - Newest record at the last saving; null when there was none.
 * @param isLasting - Whether the browser has promised to keep what it holds; without that, half as much counts as much.
 * @param nowMs - ms since 1970.
 */
export function atStake(
  checkIds: readonly RecordId[],
  savedUpTo: RecordId | null,
  isLasting: boolean,
  nowMs: number,
): AtStake {
  const unsaved = checkIds.filter((id) => savedUpTo === null || id > savedUpTo);
  const [first] = unsaved;
  if (first === undefined) return { photos: 0, sinceMs: null, level: 'nothing' };
  const sinceMs = madeAt(first);
  const weight = isLasting ? 1 : 2;
  const days = (nowMs - sinceMs) / DAY_MS;
  const reached = LEVELS.find(
    (one) => weight * unsaved.length >= one.photos || (unsaved.length >= FEW && weight * days >= one.days),
  );
  return { photos: unsaved.length, sinceMs, level: reached?.level ?? 'little' };
}
