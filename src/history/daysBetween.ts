import type { Day } from '../journal/records';

const DAY_MS = 86_400_000;

/** Whole days from one day of the calendar to another; negative when the second is earlier. NaN for what is no day. */
export function daysBetween(from: Day, to: Day): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** The last day that YYYY-MM-DD can say. */
const LAST_MS = Date.UTC(9999, 11, 31);

/** The day so many days after another, as far as four digits of a year reach. */
export function dayAfter(day: Day, days: number): Day {
  const ms = Date.parse(`${day}T00:00:00Z`) + Math.round(days) * DAY_MS;
  return new Date(Math.min(LAST_MS, ms)).toISOString().slice(0, 10);
}
