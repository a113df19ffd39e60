import { afterEach, expect, it } from 'vitest';
import { batchHistory } from '../../../src/history/batchHistory';
import { batchOutlook } from '../../../src/history/batchOutlook';
import { stoneOutlook, weeks } from '../../../src/history/stoneOutlook';
import { verdictNow } from '../../../src/history/verdictNow';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';
import type { Texts } from '../../../src/texts/texts';
import { inventedBatch, weeksInCoarse } from '../../helpers/inventedBatch';

const speakGerman = () => speak({ language: 'de', texts: german });
afterEach(() => speak({ language: 'en', texts: english, length: 'mm' }));

type Words = Texts['history'];

/** Every text said with sample facts; the facts that must be found again in it. */
const SAID: Readonly<Record<string, readonly [say: (words: Words) => string, ...facts: string[]]>> = {
  about: [(words) => words.about(3, 'week', [2, 5]), '3', '2', '5'],
  stays: [(words) => words.stays('pit', 4, '1.2 per cm²', '0.5 per cm²'), '4', '1.2 per cm²', '0.5 per cm²'],
  tooSmallFirst: [(words) => words.tooSmallFirst('3 W', '9 mm', '10 mm'), '3 W', '9 mm', '10 mm'],
  clears: [(words) => words.clears('3 W'), '3 W'],
  batchReady: [(words) => words.batchReady(2, 9), '2', '9'],
  batchClears: [(words) => words.batchClears(4, '3 W'), '4', '3 W'],
  batchStays: [(words) => words.batchStays(2), '2'],
  batchOthers: [(words) => words.batchOthers(3), '3'],
  batchEarly: [(words) => words.batchEarly(5), '5'],
  glossStuck: [(words) => words.glossStuck('40', 'fine', '38', 'prepolish'), '40', '38'],
  glossLate: [(words) => words.glossLate('38', 'fine'), '38'],
  glossOnTime: [(words) => words.glossOnTime('60', 'polish'), '60'],
  learnedPits: [(words) => words.learnedPits('coarse', '1.2', 'per cm²', '0.5'), '1.2', 'per cm²', '0.5'],
  learnedFractures: [(words) => words.learnedFractures('coarse', '3 mm', '2'), '3 mm', '2'],
  opened: [(words) => words.opened('fracture', '2026-03-02', 'medium'), '2026'],
  usualEnd: [(words) => words.usualEnd('jasper', 7, '30', '33'), '7', '30', '33'],
  polishBroughtNothing: [(words) => words.polishBroughtNothing('jasper', 'satin')],
  underPolished: [(words) => words.underPolished(7, '30'), '7', '30'],
};

it('says everything in German, with its facts', () => {
  const functions = Object.entries(german.history).filter(([, text]) => typeof text === 'function');
  expect(Object.keys(SAID).sort()).toEqual(functions.map(([name]) => name).sort());
  for (const [name, [say, ...facts]] of Object.entries(SAID)) {
    const [said, before] = [say(german.history), say(english.history)];
    expect(said, name).not.toBe(before);
    for (const fact of facts) for (const text of [said, before]) expect(text, name).toContain(fact);
  }
});

it('counts days, weeks and stones in singular and plural', () => {
  speakGerman();
  expect(weeks({ middle: 1, low: 1, high: 1 })).toBe('etwa 1 Tag');
  expect(weeks({ middle: 8, low: 4, high: 11 })).toBe('etwa 8 Tage (4 bis 11)');
  expect(weeks({ middle: 21, low: 14, high: 35 })).toBe('etwa 3 Wochen (2 bis 5)');
  expect([german.history.batchStays(1), german.history.batchStays(2)]).toEqual([
    '1 schafft es kaum',
    '2 schaffen es kaum',
  ]);
  expect(english.history.batchClears(1, 'about 1 week')).toBe('1 more will clear, in about 1 week');
});

it('writes the day of a check as Germans do', () => {
  expect(german.history.opened('pit', '2026-03-02', 'polish')).toContain('vom 2. März 2026');
});

/** One stone whose fracture no longer gets shorter. */
const STANDING = batchHistory(
  inventedBatch(weeksInCoarse([14, 9, 7.4, 7, 7, 7].map((fractureMm) => [{ fractureMm }]))),
);

it('says an outlook in the language and unit spoken now, though it was worked out before', () => {
  const { checks } = STANDING.stones[0]!;
  const before = stoneOutlook(checks)!;
  speakGerman();
  const now = stoneOutlook(checks)!;
  expect([now.kind, now.isFirm]).toEqual([before.kind, before.isFirm]);
  expect(now.sentence).toMatch(/auf etwa [\d,]+ mm hinaus, und 2 mm dürfen bleiben/);
  expect(stoneOutlook(checks)).toBe(now);
  speak({ length: 'inch' });
  expect(stoneOutlook(checks)!.sentence).toMatch(/auf etwa 0,\d+ in hinaus, und 0,079 in dürfen bleiben/);
  expect(verdictNow(checks, null, null).reasons[0]).toMatch(/Restfehler/);
});

it('sums up a batch in German', () => {
  speakGerman();
  expect(batchOutlook(STANDING)!.sentence).toBe('0 von 1 sind so weit; 1 schafft es kaum.');
});
