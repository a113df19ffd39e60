import fc from 'fast-check';
import { expect, it } from 'vitest';
import { calendarLines, calendarText } from '../../src/bundle/calendarLines';
import { nextCheck } from '../../src/bundle/nextCheck';
import { type Reminder, reminderCalendar } from '../../src/bundle/reminderCalendar';
import { batchHistory } from '../../src/history/batchHistory';
import type { MachineRecord, RunRecord } from '../../src/journal/records';
import { inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';

const ID = '01ARZ3NDEKTSV4RRFFQ69G5FAV';
const NOW = new Date('2026-03-09T18:05:30.250Z');
const reminder: Reminder = {
  batch: ID,
  batchName: 'River; sea, and "brook"',
  day: '2026-12-31',
  note: 'Rinse.\nDry.',
};

/** Takes folding back: RFC 5545, 3.1, "removing the CRLF and the linear white-space character that immediately follows". */
const unfolded = (file: string) => file.replace(/\r\n[ \t]/g, '').split('\r\n');
const lineOf = (file: string, name: string) => unfolded(file).find((line) => line.startsWith(name));

it('writes an event of a whole day with an alarm, rung in the morning', () => {
  expect(unfolded(reminderCalendar([reminder], NOW))).toEqual([
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Glintgrade//Journal//EN',
    'CALSCALE:GREGORIAN',
    'BEGIN:VEVENT',
    `UID:next-check-${ID}@glintgrade`,
    'DTSTAMP:20260309T180530Z',
    'SEQUENCE:97565',
    'DTSTART;VALUE=DATE:20261231',
    'DTEND;VALUE=DATE:20270101',
    'SUMMARY:Check River\\; sea\\, and "brook"',
    'DESCRIPTION:Rinse.\\nDry.',
    'TRANSP:TRANSPARENT',
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    'DESCRIPTION:Check River\\; sea\\, and "brook"',
    'TRIGGER:PT9H',
    'END:VALARM',
    'END:VEVENT',
    'END:VCALENDAR',
    '',
  ]);
});

// RFC 5545, 3.3.11, the example of a TEXT value.
it('escapes text as the example of the standard does', () => {
  expect(calendarText('Project XYZ Final Review\nConference Room - 3B\nCome Prepared.')).toBe(
    'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
  );
  expect(calendarText('a\\b;c,d\r\ne\rf\u0000\u007f\tg')).toBe('a\\\\b\\;c\\,d\\ne\\nf\tg');
});

// RFC 5545, 3.1: lines of 75 octets at most, the line break excluded.
it('folds no line longer than it may be, cuts no character, and loses nothing', () => {
  const aLine = fc.string({ unit: fc.constantFrom('a', 'é', '石', '💎', ' ', ':'), maxLength: 200 });
  fc.assert(
    fc.property(fc.array(aLine), (lines) => {
      const file = calendarLines(lines);
      for (const line of file.split('\r\n')) {
        expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
        expect(line).not.toMatch(/\p{Surrogate}/u);
      }
      // A line of its own that begins with a space cannot be told from a fold; no property's name does.
      const named = lines.map((line) => `X:${line}`);
      expect(unfolded(calendarLines(named))).toEqual([...named, '']);
    }),
  );
  expect(calendarLines(['a'.repeat(75)])).toBe(`${'a'.repeat(75)}\r\n`);
  expect(calendarLines(['a'.repeat(76)])).toBe(`${'a'.repeat(75)}\r\n a\r\n`);
});

it('replaces the event of the same batch by a later one, and leaves those of others', () => {
  const later = { ...reminder, day: '2027-01-05' };
  const [first, second] = [
    reminderCalendar([reminder], NOW),
    reminderCalendar([later, { ...later, batch: ID.replace('V', 'W') }], new Date(NOW.getTime() + 60_000)),
  ];
  const sequence = (file: string) => Number(lineOf(file, 'SEQUENCE:')!.slice(9));
  expect(lineOf(second, 'UID:')).toBe(lineOf(first, 'UID:'));
  expect(sequence(second)).toBe(sequence(first) + 1);
  expect(new Set(unfolded(second).filter((line) => line.startsWith('UID:'))).size).toBe(2);
  // RFC 5545, 3.3.8: an INTEGER goes up to 2147483647.
  expect(sequence(reminderCalendar([reminder], new Date('2999-12-31')))).toBeLessThan(2 ** 31);
});

it('says nothing more when there is no note, and needs a reminder', () => {
  const events = unfolded(reminderCalendar([{ ...reminder, note: '' }], NOW));
  expect(events.filter((line) => line.startsWith('DESCRIPTION'))).toHaveLength(1);
  expect(() => reminderCalendar([], NOW)).toThrow('at least one reminder');
});

const machine = (id: string, type: MachineRecord['type']): MachineRecord => ({
  kind: 'machine',
  id,
  name: type,
  type,
  capacityKg: null,
});
const MACHINES = [machine('01R', 'rotary'), machine('01V', 'vibratory')];
const run = (part: Partial<RunRecord>): RunRecord => ({
  ...{
    kind: 'run',
    id: '01N',
    batch: '01B',
    machine: '01R',
    step: 'coarse',
    startedOn: '2026-03-12',
    endedOn: null,
    charge: '',
  },
  ...part,
});

// Common practice, as src/grading/steps.ts has it: coarse is looked at after a week, a fine step in a bowl takes two days.
it('reminds of the next check by the step and the machine', () => {
  const history = batchHistory(inventedBatch(weeksInCoarse([[{}], [{}]])));
  expect(nextCheck(history, MACHINES)).toMatchObject({
    batch: history.batch.id,
    batchName: 'Brook pebbles',
    day: '2026-03-23',
  });
  const day = (...runs: RunRecord[]) => nextCheck({ ...history, runs }, MACHINES)?.day;
  expect(day(run({}))).toBe('2026-03-23');
  expect(day(run({ startedOn: '2026-03-17' }))).toBe('2026-03-24');
  expect(day(run({ startedOn: '2026-03-17', step: 'fine' }))).toBe('2026-03-23');
  expect(day(run({ startedOn: '2026-03-17', step: 'fine', machine: '01V' }))).toBe('2026-03-19');
  expect(day(run({ startedOn: '2026-03-17', step: 'coarse', machine: '01V' }))).toBe('2026-03-24');
  expect(day(run({ startedOn: '2026-03-17', step: 'fine', endedOn: '2026-03-20' }))).toBe('2026-03-23');
  expect(day(run({ startedOn: '2026-03-17' }), run({ startedOn: '2026-03-20', step: 'polish' }))).toBe(
    '2026-03-26',
  );
});

it('reminds of nothing that is over or was not begun', () => {
  const history = batchHistory(inventedBatch(weeksInCoarse([[{}]])));
  expect(nextCheck({ ...history, batch: { ...history.batch, isOver: true } }, [])).toBeNull();
  expect(nextCheck({ ...history, checks: [] }, [])).toBeNull();
});
