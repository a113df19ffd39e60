import { daysBetween } from '../history/daysBetween';
import type { Day } from '../journal/records';

/** Something due, with its day. */
interface Due {
  readonly day: Day;
}

/** What is due, the most pressing first. */
export interface DueList<T extends Due> {
  readonly overdue: readonly DueItem<T>[];
  readonly today: readonly DueItem<T>[];
  /** In the days ahead that were asked for. */
  readonly soon: readonly DueItem<T>[];
  readonly later: readonly DueItem<T>[];
}

export interface DueItem<T extends Due> {
  readonly due: T;
  /** Days from today; negative when it is past. */
  readonly inDays: number;
}

/**
 * Sorts what is due by day.
 *
 * @param ahead - Days that count as soon, today not counted.
 * @returns Things of one day stay in the order they came; those whose day is no day are left out.
 */
export function dueList<T extends Due>(dues: readonly T[], today: Day, ahead = 7): DueList<T> {
  const items = dues
    .map((due) => ({ due, inDays: daysBetween(today, due.day) }))
    .filter(({ inDays }) => Number.isFinite(inDays))
    .sort((a, b) => a.inDays - b.inDays);
  const between = (from: number, to: number) => items.filter(({ inDays }) => inDays >= from && inDays <= to);
  return {
    overdue: between(Number.NEGATIVE_INFINITY, -1),
    today: between(0, 0),
    soon: between(1, ahead),
    later: between(ahead + 1, Number.POSITIVE_INFINITY),
  };
}
