import { ownWords } from '../texts/ownWords';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { CompareBy, CompareWhat } from './compareBy';
import type { GroupSummary } from './groupSummary';

/** A share as one would say it: "88 %", never parted at a line's end; a minus sign for less than nothing. */
export const percent = (share: number) => `${whole(100 * share)}\u00a0%`;

const whole = (value: number) => String(Math.round(value) || 0).replace('-', '−');

/** Two shares as a range: "82 to 93 %"; a single one where both read the same. */
export const percents = (low: number, high: number) =>
  percent(low) === percent(high) ? percent(low) : texts().compare.range(whole(100 * low), percent(high));

/** "1 week", "6.1 weeks". */
export const weeks = (time: number) => texts().compare.weeks(plainNumber(time));

/** What a group is called, also where nothing was said. */
export const groupName = (name: string, by: CompareBy) => (name === '' ? texts().compare.unsaid[by] : name);

/** A group's name in the middle of a sentence: the owner's own names stay as they are. */
export function nameInside(name: string, by: CompareBy): string {
  const words = texts().compare;
  if (name === '') return words.unsaidWithin[by];
  return by === 'batch' || by === 'source' ? ownWords(name) : words.within(name);
}

/** Stones that a claim on the group rests on. */
export const claimBasis = ({ known, givenUp }: GroupSummary, what: CompareWhat) =>
  what === 'finished' ? known + givenUp : known;

/** How many stones speak for a group: "14 stones", "14 stones of 3 batches", "3 stones only". */
export function countWords(group: GroupSummary, what: CompareWhat): string {
  const words = texts().compare;
  if (group.isFew) return words.countOnly(claimBasis(group, what));
  const count = what === 'coarse' ? group.figures.length : claimBasis(group, what);
  return group.batches === 1 ? words.count(count) : words.countOfBatches(count, group.batches);
}

/** The stones of which the end is not known yet, or will never come: "4 still in coarse, 1 set aside"; empty without. */
export function openEndWords({ waiting, givenUp }: GroupSummary, what: CompareWhat): string {
  const { stillInCoarse, stillUnderWay, setAside } = texts().compare;
  const still = what === 'coarse' ? stillInCoarse : stillUnderWay;
  return [waiting > 0 && still(waiting), givenUp > 0 && setAside(givenUp)]
    .filter((part) => part !== false)
    .join(', ');
}
