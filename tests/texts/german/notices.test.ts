import { afterEach, expect, it } from 'vitest';
import { REFUSALS, Refusal, refusalSentence, WARNINGS, warningSentence } from '../../../src/image/notice';
import { explainFailure, troubleSentence } from '../../../src/state/explainFailure';
import { english } from '../../../src/texts/english/english';
import { german } from '../../../src/texts/german/german';
import { speak } from '../../../src/texts/speech';

const inEnglish = { language: 'en', texts: english, length: 'mm' } as const;
const inGerman = { language: 'de', texts: german } as const;
afterEach(() => speak(inEnglish));

it('says every refusal and warning in German, each in words of its own', () => {
  const all = () => [...REFUSALS.map(refusalSentence), ...WARNINGS.map(warningSentence)];
  const before = all();
  speak(inGerman);
  const now = all();
  expect(now.filter((sentence) => before.includes(sentence))).toEqual([]);
  expect(new Set(now).size).toBe(REFUSALS.length + WARNINGS.length);
});

it('keeps the numbers of a refusal', () => {
  expect(german.notices.refusals['too-small']).toContain('200 Pixel');
  expect(german.notices.refusals['too-large']).toContain('50 Megapixel');
});

it('counts pixels by the inch for those who measure in inches', () => {
  for (const words of [inEnglish, inGerman]) {
    speak({ ...words, length: 'mm' });
    expect(refusalSentence('low-resolution')).toMatch(/millimeter/i);
    expect(warningSentence('low-resolution')).toMatch(/millimeter/i);
    speak({ length: 'inch' });
    expect(refusalSentence('low-resolution')).toMatch(/(hundred|hundert).*(inch|Zoll)/);
    expect(warningSentence('low-resolution')).toMatch(/inch|Zoll/);
  }
});

it('says what went wrong before in the language spoken now', () => {
  const going = new AbortController().signal;
  const refused = explainFailure(new Refusal('no-stone'), going);
  const failed = explainFailure(new Error('No memory left.'), going);
  const stopped = explainFailure(null, AbortSignal.abort());
  speak(inGerman);
  expect(troubleSentence(refused)).toBe(german.notices.refusals['no-stone']);
  expect(troubleSentence(failed)).toMatch(/misslungen.*\(No memory left\.\)/);
  expect(troubleSentence(stopped)).toContain('nicht gemessen');
});

it('names the cause of what broke off, where there is one', () => {
  const { brokeOff, analysisFailed, answerUnread } = german.notices;
  expect(brokeOff('')).toBe('Die Messung brach ab: Versuch es noch einmal mit dem Foto.');
  expect(brokeOff(answerUnread)).toContain('(eine Antwort war nicht zu lesen)');
  expect(analysisFailed('out of memory')).toContain('misslungen: out of memory');
});
