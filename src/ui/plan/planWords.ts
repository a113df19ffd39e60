import { STEP_FACTS, type Step } from '../../grading/steps';
import type { MachineRecord } from '../../journal/records';
import type { Filling } from '../../recipes/filling';
import type { Mismatch } from '../../recipes/hardness';
import type { Recipe, SaidBy } from '../../recipes/recipe';
import { onTheScale } from '../../recipes/supplies';
import { type Units, weightWords } from '../../recipes/units';
import type { WashOutItem } from '../../recipes/washOut';

/** All texts of the plan, recipe and wash-out screens. */
export const PLAN_WORDS = {
  plan: 'Plan',
  due: 'Due',
  overdue: 'Overdue',
  today: 'Today',
  soon: 'In the next days',
  later: 'Later',
  nothingDue: 'Nothing is due. Start a run in a batch, and the day of its next check appears here.',
  unknownBatches: 'No charge and no check is noted yet of',
  noCharge: 'no charge noted since its last check',
  free: 'Free now',
  calendar: 'Save as a calendar file',
  filling: 'How full',
  fillingEmpty:
    'Keep a check of a batch, and how full its machine is with the stones that stay appears here.',
  fillingHow:
    'Weights are estimated from the photo: each stone as an ellipsoid of quartz (2.65 g/cm³), 0.7 times as thick as it is wide. The bar is pale as far as that may be off. A full load is what you said the machine holds.',
  fillHardness: 'Fill up only with stones within about one Mohs step of these.',
  grit: 'Grit on hand',
  gritEmpty: 'Say what you have of a grit, and each run takes its charge off.',
  gritHow:
    'Grams follow from level spoons and are good to a fifth. Each check in coarse counts as one more charge.',
  gritSupply: 'What',
  gritSave: 'This is what I have',
  gritSay: 'Say what is on hand',
  cancel: 'Cancel',
  washOut: 'Wash-out',
  washOutWhy: 'One coarse grain carried over scratches a polish.',
  washOutBegin: 'Begin the wash-out',
  washOutDone: 'All ticked. The finer grit may go in.',
  soapStart: 'I started it now',
  soapAgain: 'Start the time anew',
  common:
    'What is not marked otherwise is common practice, without a published source. Where your machine’s manual or your local rules say otherwise, they count.',
  change: 'Change amounts',
  save: 'Save',
  asUsual: 'Back to the usual',
  undo: 'Undo: my own amounts again',
  machine: 'Machine',
  noMachine: 'Add a machine in the journal, and amounts are scaled to it.',
  noUsual:
    'Coarse is usually ground in a barrel; there are no usual amounts for a bowl. Your own can be written down.',
  note: 'Your remark',
  daysFrom: 'Days, from',
  daysTo: 'to',
  start: 'Start this run today',
  recharge: 'Charged again today',
  goesOn: 'In the machine since',
  washFirst: 'Not everything of the wash-out is ticked yet.',
  next: 'What is next',
} as const;

/** Marks beside a line; common practice is said once for all. */
export const SAID_BY_WORDS: Readonly<Record<SaidBy, string>> = {
  'common-practice': '',
  ours: 'our default',
  owner: 'yours',
};

export const WASH_OUT_WORDS: Readonly<Record<WashOutItem, string>> = {
  slurry: 'Pour stones and slurry through a sieve over a bucket',
  rinse: 'Rinse the stones over the bucket until the water runs clear',
  soap: 'Run stones, dish detergent and water in the machine, one to two hours',
  'rinse-again': 'Pour that into the bucket too, and rinse again',
  machine: 'Scrub barrel or bowl, lid, rim and seal free of grit',
  stones: 'Brush every stone; lay aside those whose pockets or fractures still hold grit',
  tools: 'Scrub sieve, brush, spoon and your hands',
  mud: 'Let the bucket settle, and put the mud out with solid waste as your local rules say, while it is moist',
  dry: 'Dry the stones and look at them under the lamp: no grain, no fresh scratch',
};

/** "today", "tomorrow", "in 3 days", "2 days over". */
export function inDaysWords(inDays: number): string {
  if (inDays === 0) return 'today';
  if (inDays === 1) return 'tomorrow';
  return inDays > 0 ? `in ${inDays} days` : `${days(-inDays)} over`;
}

/** "Tue, Mar 10"; the day itself when it is none. */
export function dayWords(day: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  const form = { weekday: 'short', month: 'short', day: 'numeric', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat('en-US', form).format(date);
}

/** "14:05" where the person is. */
export function clockWords(ms: number): string {
  return new Intl.DateTimeFormat('en-US', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(
    ms,
  );
}

export const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);
export const stonesWords = (count: number) => (count === 1 ? '1 stone' : `${count} stones`);
export const stepTitle = (step: Step) => STEP_FACTS[step].title;
export const roomWords = (type: MachineRecord['type']) => (type === 'rotary' ? 'barrel' : 'bowl');

/** "14 stones stay in coarse", "1 stone goes on to medium", "3 stones go back to coarse"; "3 are in coarse" once they turn. */
export function groupWords(count: number, from: Step, step: Step, isTurning: boolean): string {
  const title = stepTitle(step).toLowerCase();
  const one = count === 1;
  if (isTurning) return `${stonesWords(count)} ${one ? 'is' : 'are'} in ${title}`;
  if (step === from) return `${stonesWords(count)} ${one ? 'stays' : 'stay'} in ${title}`;
  const goes = one ? 'goes' : 'go';
  return step === 'coarse'
    ? `${stonesWords(count)} ${goes} back to ${title}`
    : `${stonesWords(count)} ${goes} on to ${title}`;
}

/** Why stones should not share a machine. */
export const mismatchWords = ({ softer, harder }: Mismatch) =>
  `${capitalized(softer)} and ${harder} are more than about one Mohs step apart: the softer stones are worn away. Run them apart.`;

/** How long, "7 to 10 days". */
export const spanWords = ({ from, to }: { from: number; to: number }) =>
  from === to ? days(from) : `${from} to ${days(to)}`;

/** What the amounts are for. */
export function loadWords({ isScaled, forKg, machineType }: Recipe, units: Units): string {
  if (isScaled) return `For a full load of ${weightWords(forKg, units)}, filled up`;
  const reference =
    machineType === 'rotary'
      ? `For each ${weightWords(forKg, units)} of stones`
      : `For a bowl of ${weightWords(forKg, units)}`;
  return `${reference}. Say in the journal what your machine holds, and this is scaled to it`;
}

/** How far to fill, and how much water. */
export function roomAndWater({ machineType }: Recipe): readonly { text: string; saidBy: SaidBy }[] {
  return machineType === 'rotary'
    ? [
        { text: 'Barrel two thirds to three quarters full', saidBy: 'common-practice' },
        { text: 'Water just to the top layer of stones', saidBy: 'common-practice' },
      ]
    : [
        { text: 'Bowl filled to its load', saidBy: 'ours' },
        { text: 'Only so much water that every stone stays wet, without a pool', saidBy: 'ours' },
      ];
}

/** What to do with a group and its machine, by how full that is. */
export function fillWords(
  { kind, missingKg, share }: Filling,
  step: Step,
  mayWait: boolean,
  units: Units,
): string {
  const kg = weightWords(Math.abs(missingKg), units);
  if (kind === 'full') return 'That is a full load: add nothing.';
  if (kind === 'too-full') return `About ${kg} too much: let some wait for the next charge.`;
  const add = `dd about ${kg} of other stones at ${stepTitle(step).toLowerCase()}, or of ceramic media.`;
  return mayWait && share < HARDLY_FULL ? `Let them wait for more, or a${add}` : `A${add}`;
}

/** Below this share of a load it is better to gather more stones first. Our default. */
const HARDLY_FULL = 0.5;

/** "340 g left", "1.2 kg left", "0.75 lb left". */
export function stockWords(grams: number, units: Units): string {
  const inGrams = units.weight === 'kg' && grams < 1000;
  return `${inGrams ? `${onTheScale(grams)} g` : weightWords(grams / 1000, units)} left`;
}

/** "Enough for 3 more charges of the bowl". */
export function enoughWords(charges: number, machine: string): string {
  if (charges === 0) return `Not enough for one more charge in ${machine}`;
  return `Enough for ${charges === 1 ? '1 more charge' : `${charges} more charges`} in ${machine}`;
}

/** "4 charges since, 3 of them by the recipe". */
export function usedWords(charges: number, assumed: number): string {
  if (charges === 0) return 'nothing used since';
  const since = `${charges === 1 ? '1 charge' : `${charges} charges`} since`;
  if (assumed === 0) return since;
  return assumed === charges ? `${since}, by the recipe` : `${since}, ${assumed} of them by the recipe`;
}

export const capitalized = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
