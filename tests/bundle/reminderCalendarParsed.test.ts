import fc from 'fast-check';
import ICAL from 'ical.js';
import { expect, it } from 'vitest';
import { reminderCalendar } from '../../src/bundle/reminderCalendar';
import { aDay, anId } from '../helpers/arbitraryJournal';

/** Text without the control characters that a calendar cannot hold, and with line breaks of one kind. */
const aText = fc
  .string({
    unit: fc.constantFrom('a', 'é', '石', '💎', ' ', ':', ';', ',', '\\', '\n', '"', '^'),
    maxLength: 120,
  })
  .filter((text) => text !== '');
const aReminder = fc.record({ batch: anId, batchName: aText, day: aDay, note: aText });

// ical.js reads RFC 5545 by itself, as a stranger's calendar would.
it('is read by another program as it was meant', () => {
  const now = new Date('2026-03-09T18:05:30Z');
  fc.assert(
    fc.property(fc.array(aReminder, { minLength: 1, maxLength: 3 }), (reminders) => {
      const calendar = new ICAL.Component(ICAL.parse(reminderCalendar(reminders, now)));
      const events = calendar.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
      const read = events.map(({ uid, summary, description, startDate, endDate }) => ({
        ...{ uid, summary, description, isDay: startDate.isDate && endDate.isDate },
        ...{ day: startDate.toString(), days: endDate.subtractDate(startDate).toSeconds() / 86_400 },
      }));
      expect(read).toEqual(
        reminders.map(({ batch, batchName, day, note }) => ({
          ...{ uid: `next-check-${batch}@glintgrade`, summary: `Check ${batchName}`, description: note },
          ...{ isDay: true, day, days: 1 },
        })),
      );
      const [alarm] = events[0]!.component.getAllSubcomponents('valarm');
      expect(alarm!.getFirstPropertyValue('action')).toBe('DISPLAY');
      expect(String(alarm!.getFirstPropertyValue('trigger'))).toBe('PT9H');
    }),
  );
});
