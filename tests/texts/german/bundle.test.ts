import { afterEach, expect, it } from 'vitest';
import { BundleError, shown } from '../../../src/bundle/bundleError';
import { nextCheck } from '../../../src/bundle/nextCheck';
import { readRecords } from '../../../src/bundle/readRecords';
import { reminderCalendar } from '../../../src/bundle/reminderCalendar';
import { batchHistory } from '../../../src/history/batchHistory';
import { bundle as english } from '../../../src/texts/english/bundle';
import { english as allEnglish } from '../../../src/texts/english/english';
import { bundle as german } from '../../../src/texts/german/bundle';
import { german as allGerman } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import { inventedBatch, weeksInCoarse } from '../../helpers/inventedBatch';

const inGerman = () => speak({ language: 'de', texts: allGerman });
afterEach(() => speak({ language: 'en', texts: allEnglish }));

/** What `readRecords` refuses a journal of these records with. */
async function refusalOf(records: readonly unknown[]): Promise<BundleError> {
  const json = JSON.stringify({ format: 'glintgrade journal', version: 3, records });
  try {
    await readRecords(new TextEncoder().encode(json));
  } catch (error) {
    if (error instanceof BundleError) return error;
    throw error;
  }
  throw new Error('It was not refused.');
}

it('says every part of a bundle in words of its own, with the names and numbers given', () => {
  const said = ({ parts, unmet, calendar }: typeof german | typeof english) => [
    parts.about('a.jpg'),
    parts.name('a.jpg'),
    parts.id('01C'),
    parts.unpaired('a.jpg'),
    parts.misnamed('a.jpg'),
    parts.noJpeg('a.jpg'),
    parts.lacking(1),
    parts.record(3, null, null),
    parts.noObject('3'),
    unmet.missing('a.b', 'number'),
    unmet.otherKind('a.b', 'string'),
    unmet.bound('a.b', 'at least', '7', null),
    unmet.noDay('a.b'),
    unmet.illWritten('a.b'),
    unmet.unknownFields('a.b', 'c'),
    unmet.noneOf('a.b', 'c'),
    unmet.unknownKind('a.b'),
    unmet.other('a.b'),
    calendar.title('3'),
    calendar.note('3', 7),
  ];
  const [inEnglish, said2] = [said(english), said(german)];
  for (const [i, sentence] of said2.entries()) {
    expect(sentence).not.toBe(inEnglish[i]);
    expect(sentence).toMatch(/a\.jpg|01C|1|3|a\.b/);
  }
});

it('counts letters, entries and days as German does', () => {
  const { bound } = german.unmet;
  expect(bound(null, 'at least', '1', 'entries')).toBe('er muss mindestens 1 Eintrag haben');
  expect(bound('flaws', 'at most', '40', 'entries')).toBe('flaws muss höchstens 40 Einträge haben');
  expect(bound('name', 'at most', '200', 'letters')).toBe('name muss höchstens 200 Zeichen lang sein');
  expect(bound('areaMm2', 'more than', '0', null)).toBe('areaMm2 muss größer als 0 sein');
  expect(german.calendar.note('Politur', 1)).toContain('1 Tag.');
  expect(german.calendar.note('Politur', 6)).toContain('6 Tage.');
});

it('says a refusal in the language that is spoken when it is read, not in that of its making', () => {
  const error = new BundleError('too-large', (parts) => parts.about(shown('photos/x.jpg')));
  expect(error.message).toBe(`${english.refusals['too-large']} It is about “photos/x.jpg”.`);
  inGerman();
  expect(error.message).toBe(`${german.refusals['too-large']} Es geht um „photos/x.jpg“.`);
});

it('says in German what a record lacks', async () => {
  const record = { kind: 'batch', id: '01ARZ3NDEKTSV4RRFFQ69G5FAV', machine: null, startedOn: '2026-02-30' };
  const error = await refusalOf([record]);
  expect(error.message).toContain('Record 1, “batch” “01ARZ3NDEKTSV4RRFFQ69G5FAV”: name must be there');
  inGerman();
  expect(error.message).toContain(
    'Eintrag 1, „batch“ „01ARZ3NDEKTSV4RRFFQ69G5FAV“: name muss da sein, und zwar als Text.',
  );
});

it('writes reminders in German', () => {
  inGerman();
  const reminder = nextCheck(batchHistory(inventedBatch(weeksInCoarse([[{}]]))), []);
  expect(reminder?.note).toContain('Grobschliff, gewöhnlich 7 Tage.');
  const file = reminderCalendar([reminder!], new Date('2026-03-09T18:05:30Z'));
  expect(file).toContain(`SUMMARY:Kontrolle: ${reminder!.batchName}\r\n`);
  expect(file).toContain('PRODID:-//Glintgrade//Journal//DE\r\n');
});
