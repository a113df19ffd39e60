import type { Day } from '../journal/records';

const DAY_MS = 86_400_000;

/** Whole days from one day of the calendar to another; negative when the second is earlier. NaN for what is no day. */
export function daysBetween(from: Day, to: Day): number {
  return Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);
}

/** The day so many days after another. */
export function dayAfter(day: Day, days: number): Day {
  return new Date(Date.parse(`${day}T00:00:00Z`) + Math.round(days) * DAY_MS).toISOString().slice(0, 10);
}
