import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { CompareBy, CompareWhat } from './compareBy';
import { claimBasis, nameInside, openEndWords, percent, percents, weeks } from './compareWords';
import type { GroupSummary } from './groupSummary';

/** A group's figures without its name and count, as they stand beside its dots. */
export function groupWords(group: GroupSummary, what: CompareWhat): string {
  if (group.isFew) return fewWords(group, what);
  const words = texts().compare;
  const middle = percent(group.middle ?? 0);
  switch (what) {
    case 'gloss':
      return words.gloss(middle, halfOf(group));
    case 'coarse':
      return coarseWords(group);
    case 'size':
      return words.size(middle, percent(group.beside ?? 0), halfOf(group));
    case 'finished':
      return finishedWords(group);
  }
}

/**
 * A group's figures as a sentence of its own: "Agate reached 88 % of its ceiling (median of 14; half of them 82 to
 * 93 %)."
 */
export function groupSentence(group: GroupSummary, by: CompareBy, what: CompareWhat): string {
  const words = texts().compare;
  const subject = subjectOf(group.name, by);
  const count = claimBasis(group, what);
  if (group.isFew) return words.tooFew(subject, count);
  const isOne = by === 'material' && group.name !== '';
  const middle = percent(group.middle ?? 0);
  switch (what) {
    case 'gloss':
      return words.reached(subject, isOne, middle, count, halfOf(group));
    case 'size':
      return words.lost(subject, isOne, middle, count, halfOf(group));
    case 'coarse':
    case 'finished':
      return words.sentence(subject, groupWords(group, what));
  }
}

/** What the middle may truly be: "In truth likely 84 to 91 %." Null where it cannot be said. */
export function sureWords({ sure, middle }: GroupSummary, what: CompareWhat): string | null {
  if (sure === null || sure[0] === null || middle === null) return null;
  const words = texts().compare;
  const [low, high] = sure;
  if (what === 'coarse') {
    return high === null ? words.likelyWeeksOpen(weeks(low)) : words.likelyWeeks(weeks(low), weeks(high));
  }
  const range = percents(low, high ?? low);
  return what === 'finished' ? words.likelyShare(range) : words.likelyMedian(range);
}

const halfOf = ({ half }: GroupSummary) => percents(half?.[0] ?? 0, half?.[1] ?? 0);

function subjectOf(name: string, by: CompareBy): string {
  const { subject, subjectUnsaid } = texts().compare;
  if (name === '') return subjectUnsaid[by];
  return subject[by](by === 'recipe' ? nameInside(name, by) : name);
}

function coarseWords(group: GroupSummary): string {
  const words = texts().compare;
  const { middle, half, known, figures } = group;
  const open = openEndWords(group, 'coarse');
  const said =
    middle === null
      ? words.fewHadLeft(known, figures.length)
      : [words.halfHadLeft(weeks(middle)), ...quarters(half)].join(', ');
  return open === '' ? said : `${said}; ${open}`;
}

function quarters(half: GroupSummary['half']): string[] {
  const { quarterAfter, threeQuartersAfter } = texts().compare;
  const [first, third] = half ?? [null, null];
  return [
    ...(first === null ? [] : [quarterAfter(plainNumber(first))]),
    ...(third === null ? [] : [threeQuartersAfter(plainNumber(third))]),
  ];
}

function finishedWords(group: GroupSummary): string {
  const words = texts().compare;
  const { known, waiting, middle, sure } = group;
  const likely = percents(sure?.[0] ?? 0, sure?.[1] ?? 1);
  const said = words.finished(known, claimBasis(group, 'finished'), percent(middle ?? 0), likely);
  return waiting === 0 ? said : `${said}; ${words.stillUnderWay(waiting)}`;
}

/** Of few stones each figure is told by itself. */
function fewWords(group: GroupSummary, what: CompareWhat): string {
  const words = texts().compare;
  if (what === 'gloss' || what === 'size') {
    const each = group.figures.map(({ value }) => percent(value)).join(', ');
    return what === 'gloss' ? words.eachOfCeiling(each) : words.eachOfLength(each);
  }
  const open = openEndWords(group, what);
  const done = what === 'coarse' ? words.leftCoarse(group.known) : words.finishedCount(group.known);
  return open === '' ? done : `${done}, ${open}`;
}

/** The middle alone, for a column of numbers; a dash where nothing is claimed. */
export function middleWords({ middle }: GroupSummary, what: CompareWhat): string {
  if (middle === null) return '–';
  return what === 'coarse' ? weeks(middle) : percent(middle);
}
