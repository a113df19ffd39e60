import { plainNumber } from '../grading/plainNumber';
import type { CompareBy, CompareWhat } from './compareBy';
import { claimBasis, groupName, openEndWords, percent, percents, weeks } from './compareWords';
import type { GroupSummary } from './groupSummary';

/** A group's figures without its name and count, as they stand beside its dots. */
export function groupWords(group: GroupSummary, what: CompareWhat): string {
  if (group.isFew) return fewWords(group, what);
  switch (what) {
    case 'gloss':
      return `${percent(group.middle ?? 0)} of the ceiling; half of them ${halfOf(group)}`;
    case 'coarse':
      return coarseWords(group);
    case 'size':
      return `${percent(group.middle ?? 0)} of the length lost, ${percent(group.beside ?? 0)} of the area; half of them ${halfOf(group)} of the length`;
    case 'finished':
      return finishedWords(group);
  }
}

/**
 * A group's figures as a sentence of its own: "Agate reached 88 % of its ceiling (median of 14; half of them 82 to
 * 93 %)."
 */
export function groupSentence(group: GroupSummary, by: CompareBy, what: CompareWhat): string {
  const subject = subjectOf(group.name, by);
  const count = claimBasis(group, what);
  if (group.isFew)
    return `${subject}: ${count === 1 ? '1 stone' : `${count} stones`} only, so nothing is claimed.`;
  const its = by === 'material' && group.name !== '' ? 'its' : 'their';
  switch (what) {
    case 'gloss':
      return `${subject} reached ${percent(group.middle ?? 0)} of ${its} ceiling (median of ${count}; half of them ${halfOf(group)}).`;
    case 'size':
      return `${subject} lost ${percent(group.middle ?? 0)} of ${its} length (median of ${count}; half of them ${halfOf(group)}).`;
    case 'coarse':
    case 'finished':
      return `${subject}: ${groupWords(group, what)}.`;
  }
}

/** What the middle may truly be: "In truth likely 84 to 91 %." Null where it cannot be said. */
export function sureWords({ sure, middle }: GroupSummary, what: CompareWhat): string | null {
  if (sure === null || sure[0] === null || middle === null) return null;
  const [low, high] = sure;
  if (what === 'coarse') {
    return high === null
      ? `The true median is likely ${weeks(low)} or more; how much more, those still in coarse will tell.`
      : `The true median is likely between ${weeks(low)} and ${weeks(high)}.`;
  }
  const which = what === 'finished' ? 'share' : 'median';
  return `The true ${which} is likely ${percents(low, high ?? low)} (19 times in 20).`;
}

const halfOf = ({ half }: GroupSummary) => percents(half?.[0] ?? 0, half?.[1] ?? 0);

function subjectOf(name: string, by: CompareBy): string {
  const unsaid = name === '';
  switch (by) {
    case 'material':
      return unsaid ? 'Stones whose material was not said' : name;
    case 'source':
      return unsaid ? 'Stones whose source was not said' : `Stones from ${name}`;
    case 'batch':
      return groupName(name, by);
    case 'recipe':
      return unsaid
        ? 'Stones without a step'
        : `Stones through ${name.charAt(0).toLowerCase()}${name.slice(1)}`;
  }
}

function coarseWords(group: GroupSummary): string {
  const { middle, half, known, figures } = group;
  const open = openEndWords(group, 'coarse');
  const said =
    middle === null
      ? `fewer than half have left coarse, ${known} of ${figures.length}`
      : [`half had left coarse after ${weeks(middle)}`, ...quarters(half)].join(', ');
  return open === '' ? said : `${said}; ${open}`;
}

function quarters(half: GroupSummary['half']): string[] {
  const [first, third] = half ?? [null, null];
  return [
    ...(first === null ? [] : [`a quarter after ${plainNumber(first)}`]),
    ...(third === null ? [] : [`three quarters after ${plainNumber(third)}`]),
  ];
}

function finishedWords(group: GroupSummary): string {
  const { known, waiting, middle, sure } = group;
  const said = `${known} of ${claimBasis(group, 'finished')} finished, ${percent(middle ?? 0)}; the true share is likely ${percents(sure?.[0] ?? 0, sure?.[1] ?? 1)}`;
  return waiting === 0 ? said : `${said}; ${waiting} still under way`;
}

/** Of few stones each figure is told by itself. */
function fewWords(group: GroupSummary, what: CompareWhat): string {
  if (what === 'gloss' || what === 'size') {
    const each = group.figures.map(({ value }) => percent(value)).join(', ');
    return `${each} of the ${what === 'gloss' ? 'ceiling' : 'length lost'}`;
  }
  const open = openEndWords(group, what);
  const done = what === 'coarse' ? `${group.known} left coarse` : `${group.known} finished`;
  return open === '' ? done : `${done}, ${open}`;
}

/** The middle alone, for a column of numbers; a dash where nothing is claimed. */
export function middleWords({ middle }: GroupSummary, what: CompareWhat): string {
  if (middle === null) return '–';
  return what === 'coarse' ? weeks(middle) : percent(middle);
}
