import { afterEach, expect, it } from 'vitest';
import { STEPS } from '../../../src/grading/steps';
import type { StoneOutlook } from '../../../src/history/stoneOutlook';
import { readCharge } from '../../../src/recipes/readCharge';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { type Speech, speak } from '../../../src/texts/speech';
import { outlookNote } from '../../../src/ui/journal/outlookNote';
import { materialChoices } from '../../../src/ui/parts/materialChoices';

afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

const gloss = { gu: '71', low: '66', high: '77' };
const figures = { length: '31 mm', pits: '3,1', perArea: 'pro cm²', fractures: '2 mm', gloss };

/** Everything that takes a number, a day or a name. */
const said = ({ journal }: Speech['texts']) => [
  journal.batchLine(7, 7, { day: '7', step: '7' }, true),
  journal.showMore(7),
  journal.trayOn('7'),
  journal.inAndOut.brought(7, 9),
  journal.storage.room('7 MB', '2 GB'),
  journal.machines.holds('7'),
  journal.runs.days('7', '8'),
  journal.runs.days('7', null),
  journal.batch.started('7', 2, true),
  journal.batch.nameStones(7),
  journal.readyIn(7),
  journal.readyIn(49),
  journal.checkLine('7', '7', 7, 2),
  journal.stone.checked(7, '7'),
  journal.stone.grindOn('7'),
  journal.stone.checkLine('7', '7', 2),
  journal.stone.onDay('7', '7'),
  journal.stone.youDid('7'),
  journal.stone.decidedSo('7'),
  journal.measured({ ...figures, length: '7' }),
  journal.beforeAfter.onDay('7'),
  journal.beforeAfter.share(7),
  journal.timeline.most('7'),
  journal.timeline.least('7'),
  journal.timeline.brokenLine('7'),
  journal.timeline.said('7', '1', '2', 'mm', '3'),
  journal.rigOf('7'),
];

it('says in German whatever it says in English, with the numbers and names given', () => {
  const inEnglish = said(english);
  for (const [i, sentence] of said(german).entries()) {
    expect(sentence).not.toBe(inEnglish[i]);
    expect(sentence).toContain('7');
  }
  expect(german.journal.rigOf(null)).toContain('unbekannten');
});

it('counts stones, checks, days and records', () => {
  const { batchLine, batch, readyIn, stone, inAndOut, checkLine } = german.journal;
  expect(batchLine(0, 0, null, false)).toBe('noch keine Kontrolle');
  expect(batchLine(1, 1, { day: '2026-03-02', step: 'Politur' }, false)).toMatch(/^1 Stein, 1 Kontrolle,/);
  expect(batchLine(12, 3, { day: '2026-03-02', step: 'Politur' }, true)).toBe(
    '12 Steine, 3 Kontrollen, zuletzt 2026-03-02 nach Politur, beendet',
  );
  expect([batch.nameStones(1), batch.nameStones(2)]).toEqual(['1 Stein benennen', '2 Steine benennen']);
  expect([0, 1, 6.6, 14].map(readyIn)).toEqual(['jetzt', '1 Tag', '7 Tage', '2 Wochen']);
  expect([0, 1, 6.6, 14].map(english.journal.readyIn)).toEqual(['now', '1 day', '7 days', '2 weeks']);
  expect(stone.checked(1, '2026-03-02')).toBe('Eine Kontrolle, am 2026-03-02.');
  expect(inAndOut.brought(1, 9)).toContain('1 von 9 Einträgen ist neu');
  expect(inAndOut.brought(2, 9)).toContain('2 von 9 Einträgen sind neu');
  expect(checkLine('2026-03-02', 'Grobschliff', 1, 1)).toBe('**2026-03-02**, nach Grobschliff, 1 Stein');
});

it('says what was measured, with and without gloss', () => {
  expect(german.journal.measured(figures)).toBe(
    '31 mm lang, 3,1 Grübchen pro cm², 2 mm Risse, 71 Glanzeinheiten (66 bis 77)',
  );
  expect(german.journal.measured({ ...figures, gloss: null })).toBe(
    '31 mm lang, 3,1 Grübchen pro cm², 2 mm Risse',
  );
});

it('puts an outlook beside a verdict in the language spoken', () => {
  speak({ language: 'de', texts: german });
  const outlook: StoneOutlook = { kind: 'clears', days: null, isFirm: false, sentence: 'Noch 14 Tage.' };
  expect(outlookNote(outlook, 'set-aside')).toBe(
    `Wenn du trotzdem weiterschleifst: Noch 14 Tage. ${german.journal.stone.notFirm}`,
  );
});

it('lists materials by their German names, sorted as German sorts them', () => {
  const inEnglish = materialChoices();
  speak({ language: 'de', texts: german });
  const choices = materialChoices();
  expect(choices).toHaveLength(inEnglish.length);
  expect(choices.find(({ material }) => material === 'agate')?.word).toBe('Achat');
  const words = choices.map(({ word }) => word);
  expect(words).toEqual([...words].sort(new Intl.Collator('de').compare));
});

it('has buttons short enough for a phone', () => {
  const { compare, inAndOut, machines, runs, batch, stone } = german.journal;
  const buttons = [
    ...[compare, inAndOut.save, inAndOut.takeIn, inAndOut.table, inAndOut.reminders, machines.add],
    ...[machines.addThis, runs.washedOut, runs.start, runs.add, batch.print, batch.makeLimit],
    ...[batch.whichIsWhich, batch.save, stone.next, stone.isFavorite, stone.makeFavorite],
  ];
  for (const word of buttons) expect(word.length, word).toBeLessThanOrEqual(24);
});

it('suggests a charge that is read back as the English one is', () => {
  for (const step of STEPS) {
    const usual = ({ verdicts }: Speech['texts']) => `${verdicts.grits[step]}: ${verdicts.charges[step]}`;
    expect(usual(german)).not.toBe(usual(english));
    expect(readCharge(usual(german), step), step).toEqual(readCharge(usual(english), step));
  }
  expect(readCharge('Siliciumcarbid 220: 2 Esslöffel', 'medium')).toEqual({ medium: 2 });
});
