import { plainNumber } from '../grading/plainNumber';
import type { CompareBy, CompareWhat } from './compareBy';
import type { GroupSummary } from './groupSummary';

/** A share as one would say it: "88 %", never parted at a line's end; a minus sign for less than nothing. */
export const percent = (share: number) => `${whole(100 * share)}\u00a0%`;

const whole = (value: number) => String(Math.round(value) || 0).replace('-', '−');

/** Two shares as a range: "82 to 93 %"; a single one where both read the same. */
export const percents = (low: number, high: number) =>
  percent(low) === percent(high) ? percent(low) : `${whole(100 * low)} to ${percent(high)}`;

/** "1 week", "6.1 weeks". */
export const weeks = (time: number) => (plainNumber(time) === '1' ? '1 week' : `${plainNumber(time)} weeks`);

/** "1 stone", "14 stones". */
export const stoneCount = (count: number) => `${count} ${count === 1 ? 'stone' : 'stones'}`;

const UNSAID: Readonly<Record<CompareBy, string>> = {
  material: 'Material not said',
  source: 'Source not said',
  batch: 'Batch without a name',
  recipe: 'No step kept',
};

/** What a group is called, also where nothing was said. */
export const groupName = (name: string, by: CompareBy) => (name === '' ? UNSAID[by] : name);

const lowerFirst = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);

/** A group's name in the middle of a sentence: the owner's own names keep their capitals. */
export const nameInside = (name: string, by: CompareBy) =>
  name !== '' && (by === 'batch' || by === 'source') ? name : lowerFirst(groupName(name, by));

/** Stones that a claim on the group rests on. */
export const claimBasis = ({ known, givenUp }: GroupSummary, what: CompareWhat) =>
  what === 'finished' ? known + givenUp : known;

/** How many stones speak for a group: "14 stones", "14 stones of 3 batches", "3 stones only". */
export function countWords(group: GroupSummary, what: CompareWhat): string {
  if (group.isFew) return `${stoneCount(claimBasis(group, what))} only`;
  const all = stoneCount(what === 'coarse' ? group.figures.length : claimBasis(group, what));
  return group.batches === 1 ? all : `${all} of ${group.batches} batches`;
}

/** The stones of which the end is not known yet, or will never come: "4 still there, 1 set aside"; empty without. */
export function openEndWords({ waiting, givenUp }: GroupSummary, what: CompareWhat): string {
  const still = what === 'coarse' ? 'still in coarse' : 'still under way';
  const parts = [waiting > 0 && `${waiting} ${still}`, givenUp > 0 && `${givenUp} set aside`];
  return parts.filter((part) => part !== false).join(', ');
}
