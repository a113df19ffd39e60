import { dayAfter } from '../history/daysBetween';
import type { Day, RecordId } from '../journal/records';
import { speech, texts } from '../texts/speech';
import { calendarLines, calendarText } from './calendarLines';

/** A check that is due. */
export interface Reminder {
  readonly batch: RecordId;
  readonly batchName: string;
  readonly day: Day;
  /** What to do, in a sentence or two; may be empty. */
  readonly note: string;
}

/** Rung at nine in the morning of the day, wherever the calendar is. Our default. */
const RINGS_AFTER = 'PT9H';
/** Counted from here, minutes fit the 31 bits of a calendar's integer for 4,000 years. */
const FIRST_MINUTE = Date.UTC(2026, 0, 1) / 60_000;

/**
 * An iCalendar file with one event of a whole day for each reminder, rung that morning.
 *
 * A batch has one event, whatever its day: a later file takes the place of an earlier one in the calendar, since it has
 * the same UID and a greater SEQUENCE.
 *
 * @param reminders - At least one.
 * @param now - When the file is made; a later one by a minute or more replaces an earlier one.
 * @throws RangeError without reminders: a calendar may not be empty.
 * @see RFC 5545: 3.6.1 (VEVENT), 3.6.6 (VALARM), 3.8.4.7 (UID), 3.8.7.4 (SEQUENCE).
 */
export function reminderCalendar(reminders: readonly Reminder[], now: Date): string {
  if (reminders.length === 0) throw new RangeError('A calendar needs at least one reminder.');
  return calendarLines([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:-//Glintgrade//Journal//${speech().language.toUpperCase()}`,
    'CALSCALE:GREGORIAN',
    ...reminders.flatMap((reminder) => eventOf(reminder, now)),
    'END:VCALENDAR',
  ]);
}

function eventOf({ batch, batchName, day, note }: Reminder, now: Date): string[] {
  const summary = calendarText(texts().bundle.calendar.title(batchName));
  return [
    'BEGIN:VEVENT',
    `UID:next-check-${batch}@glintgrade`,
    `DTSTAMP:${now.toISOString().replace(/[-:]|\.\d+/g, '')}`,
    `SEQUENCE:${Math.max(0, Math.floor(now.getTime() / 60_000 - FIRST_MINUTE))}`,
    `DTSTART;VALUE=DATE:${dateOf(day)}`,
    `DTEND;VALUE=DATE:${dateOf(dayAfter(day, 1))}`,
    `SUMMARY:${summary}`,
    ...(note === '' ? [] : [`DESCRIPTION:${calendarText(note)}`]),
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${summary}`,
    `TRIGGER:${RINGS_AFTER}`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

const dateOf = (day: Day) => day.replaceAll('-', '');
