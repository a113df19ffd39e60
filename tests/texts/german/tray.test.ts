import { afterEach, expect, it } from 'vitest';
import { STAGES } from '../../../src/analysis/options';
import { ACTIONS_BEST_FIRST } from '../../../src/grading/opinion';
import { sortingPicture } from '../../../src/picture/sortingPicture';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import { lampMovedSentence } from '../../../src/ui/photo/lampMovedSentence';
import { shotsSentence } from '../../../src/ui/photo/shotsSentence';
import { inventedReport } from '../../helpers/inventedReport';
import { spokenPairs } from '../../helpers/spokenPairs';

const speakGerman = () => speak({ language: 'de', texts: german });
afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

it('says everything of the tray in German, with the numbers given', () => {
  const { groupAndCount, ...rest } = german.tray;
  const { groupAndCount: _, ...restInEnglish } = english.tray;
  const pairs = spokenPairs(restInEnglish, rest, {
    stoneCount: [7],
    merged: [['0.25 ×', '4 ×']],
    'lampMoved.used': [92],
    stoneAndVerdict: ['7', null],
    showAllOf: ['7'],
    showOnlyOf: ['7'],
  });
  for (const { path, english: said, german: gesagt, numbers } of pairs) {
    expect(gesagt, path).not.toBe(said);
    for (const number of numbers) expect(gesagt, path).toContain(number);
  }
  expect(groupAndCount('Weiter', 7)).toBe('Weiter: 7');
});

it('has singular and plural', () => {
  expect([german.tray.stoneCount(1), german.tray.stoneCount(2)]).toEqual(['1 Stein', '2 Steine']);
  expect([english.tray.stoneCount(1), english.tray.stoneCount(2)]).toEqual(['1 stone', '2 stones']);
  speakGerman();
  expect(shotsSentence([1, 0.2503])).toBe('Mit einer weiteren Aufnahme zusammengelegt, 0,25 × so hell.');
  expect(shotsSentence([1, 0.25, 4.04])).toBe(
    'Mit 2 weiteren Aufnahmen zusammengelegt, 0,25 × und 4 × so hell.',
  );
});

it('says what a second photo was good for', () => {
  speakGerman();
  expect(lampMovedSentence(true, { inBoth: 9, turnDeg: -92.2 })).toContain('die Schale um 92° gedreht');
  expect(lampMovedSentence(true, { inBoth: 9, turnDeg: 0.4 })).not.toContain('gedreht');
});

it('has an errand for every verdict and words for every step of the analysis', () => {
  const { errands, stages } = german.tray;
  expect(new Set(ACTIONS_BEST_FIRST.map((action) => errands[action])).size).toBe(ACTIONS_BEST_FIRST.length);
  expect(new Set(STAGES.map((stage) => stages[stage])).size).toBe(STAGES.length);
});

it('draws another legend and another word beside the ball', () => {
  const report = inventedReport(3);
  const grades = report.stones.map(({ id }) => ({ id, verdict: { action: 'back-to-coarse' as const } }));
  const draw = () => sortingPicture(report, grades, { legend: true });
  const inEnglish = draw();
  speakGerman();
  expect(draw()).not.toBe(inEnglish);
  // ZURÜCK ZUM GROBSCHLIFF has one umlaut, with two dots.
  expect(draw().match(/M1\.4 -2\.6V/g)).toHaveLength(1);
});
