import type { Step } from '../../grading/steps';
import type { MachineRecord } from '../../journal/records';
import { verdicts } from './verdicts';

const { steps, stepsWithin } = verdicts;
const days = (count: number) => (count === 1 ? '1 day' : `${count} days`);
const stones = (count: number) => (count === 1 ? '1 stone' : `${count} stones`);
const charges = (count: number) => (count === 1 ? '1 charge' : `${count} charges`);

/** What is due, recipes, wash-outs, grit on hand. Weights, amounts, days and times of day come as they are written. */
export const plan = {
  title: 'Plan',
  cancel: 'Cancel',
  save: 'Save',

  // What is due
  due: 'Due',
  overdue: 'Overdue',
  today: 'Today',
  soon: 'In the next days',
  later: 'Later',
  nothingDue: 'Nothing is due. Start a run in a batch, and the day of its next check appears here.',
  /** Before names of batches. */
  unknownBatches: 'No charge and no check is noted yet of',
  noCharge: 'no charge noted since its last check',
  /** Before names of machines. */
  free: 'Free now:',
  calendar: 'Save as a calendar file',
  dueToday: 'today',
  dueTomorrow: 'tomorrow',
  dueIn: (count: number) => `in ${days(count)}`,
  dueOver: (count: number) => `${days(count)} over`,
  /** Where a batch turns; a machine of null is not known, day 0 is that of the charge. */
  turning: (step: Step, machine: string | null, day: number) =>
    `${steps[step]}${machine === null ? '' : ` in ${machine}`}, ${day === 0 ? 'charged today' : `day ${day} since its charge`}`,

  // How full
  filling: 'How full',
  fillingEmpty:
    'Keep a check of a batch, and how full its machine is with the stones that stay appears here.',
  fillingHow:
    'Fill up only with stones within about one Mohs step of these. Weights are estimated from the photo: each stone as an ellipsoid of quartz (2.65 g/cm³), 0.7 times as thick as it is wide. The bar is pale as far as that may be off. A full load is what you said the machine holds.',
  afterCheck: (day: string) => `after the check on ${day}`,
  inStep: (count: number, step: Step) =>
    `${stones(count)} ${count === 1 ? 'is' : 'are'} in ${stepsWithin[step]}`,
  staysIn: (count: number, step: Step) =>
    `${stones(count)} ${count === 1 ? 'stays' : 'stay'} in ${stepsWithin[step]}`,
  goesBack: (count: number, step: Step) =>
    `${stones(count)} ${count === 1 ? 'goes' : 'go'} back to ${stepsWithin[step]}`,
  goesTo: (count: number, step: Step) =>
    `${stones(count)} ${count === 1 ? 'goes' : 'go'} on to ${stepsWithin[step]}`,
  /** After one of the four above. */
  groupWeight: (weight: string, low: string, high: string) => `, about ${weight} (${low} to ${high})`,
  shareOfLoad: (share: string, low: string, high: string, machine: string, load: string) =>
    `${share} of a full load in ${machine} (${low} to ${high}), which takes ${load}.`,
  sayLoad: (machine: string, type: MachineRecord['type']) =>
    `Say in the journal what ${machine} holds, and how full its ${type === 'rotary' ? 'barrel' : 'bowl'} is appears here.`,
  fillFull: 'That is a full load: add nothing.',
  fillTooMuch: (weight: string) => `About ${weight} too much: let some wait for the next charge.`,
  fillAdd: (weight: string, step: Step) =>
    `Add about ${weight} of other stones at ${stepsWithin[step]}, or of ceramic media.`,
  fillWaitOrAdd: (weight: string, step: Step) =>
    `Let them wait for more, or add about ${weight} of other stones at ${stepsWithin[step]}, or of ceramic media.`,

  // Grit on hand
  grit: 'Grit on hand',
  gritEmpty: 'Say what you have of a grit, and each run takes its charge off.',
  gritHow:
    'Grams follow from level spoons and are good to a fifth. Each check in coarse counts as one more charge.',
  gritSupply: 'What',
  gritSave: 'This is what I have',
  gritSay: 'Say what is on hand',
  grams: 'Grams',
  pounds: 'Pounds',
  left: (weight: string) => `${weight} left`,
  enough: (count: number, machine: string) =>
    count === 0
      ? `Not enough for one more charge in ${machine}`
      : `Enough for ${count === 1 ? '1 more charge' : `${count} more charges`} in ${machine}`,
  /** Of the charges since it was counted, `assumed` are by the recipe. */
  counted: (day: string, count: number, assumed: number) => {
    if (count === 0) return `Counted ${day}, nothing used since`;
    const byRecipe =
      assumed === 0 ? '' : assumed === count ? ', by the recipe' : `, ${assumed} of them by the recipe`;
    return `Counted ${day}, ${charges(count)} since${byRecipe}`;
  },

  // What is next
  next: 'What is next',
  machine: 'Machine',
  start: 'Start this run today',
  recharge: 'Charged again today',
  goesOn: (day: string, charge: string) =>
    `In the machine since ${day}${charge === '' ? '' : `: ${charge}`}.`,
  washFirst: 'Not everything of the wash-out is ticked yet.',
  apart: (softer: string, harder: string) =>
    `${softer} and ${harder} are more than about one Mohs step apart: the softer stones are worn away. Run them apart.`,

  // Wash-out
  washOut: 'Wash-out',
  washOutWhy: 'One coarse grain carried over scratches a polish.',
  washOutBegin: 'Begin the wash-out',
  washOutDone: 'All ticked. The finer grit may go in.',
  washOutOf: (from: Step, to: Step) => `Wash-out: ${stepsWithin[from]} off, before ${stepsWithin[to]}`,
  ticked: (count: number, all: number) => `${count} of ${all} ticked.`,
  washOutItems: {
    slurry: 'Pour stones and slurry through a sieve over a bucket',
    rinse: 'Rinse the stones over the bucket until the water runs clear',
    soap: 'Run stones, dish detergent and water in the machine, one to two hours',
    'rinse-again': 'Pour that into the bucket too, and rinse again',
    machine: 'Scrub barrel or bowl, lid, rim and seal free of grit',
    stones: 'Brush every stone; lay aside those whose pockets or fractures still hold grit',
    tools: 'Scrub sieve, brush, spoon and your hands',
    mud: 'Let the bucket settle, and put the mud out with solid waste as your local rules say, while it is moist',
    dry: 'Dry the stones and look at them under the lamp: no grain, no fresh scratch',
  },
  soapStart: 'I started it now',
  soapAgain: 'Start the time anew',
  soapLeft: (minutes: number, from: string, to: string) =>
    `${minutes === 1 ? '1 minute' : `${minutes} minutes`} to go: stop between ${from} and ${to}.`,
  soapLong: (since: string, by: string) => `Long enough since ${since}: stop by ${by}.`,

  // Recipes
  common:
    'What is not marked otherwise is common practice, without a published source. Where your machine’s manual or your local rules say otherwise, they count.',
  change: 'Change amounts',
  asUsual: 'Back to the usual',
  undo: 'Undo: my own amounts again',
  noMachine: 'Add a machine in the journal, and amounts are scaled to it.',
  noUsual:
    'Coarse is usually ground in a barrel; there are no usual amounts for a bowl. Your own can be written down.',
  note: 'Your remark',
  daysFrom: 'Days, from',
  daysTo: 'to',
  /** Numbers of days. */
  span: (from: string, to: string) => {
    const last = to === '1' ? '1 day' : `${to} days`;
    return from === to ? last : `${from} to ${last}`;
  },
  thenCheck: 'then check',
  thenCheckAndCharge: 'then check, and charge again',
  forFullLoad: (load: string) => `For a full load of ${load}, filled up`,
  forEach: (weight: string) =>
    `For each ${weight} of stones. Say in the journal what your machine holds, and this is scaled to it`,
  forBowl: (load: string) =>
    `For a bowl of ${load}. Say in the journal what your machine holds, and this is scaled to it`,
  room: { rotary: 'Barrel two thirds to three quarters full', vibratory: 'Bowl filled to its load' },
  water: {
    rotary: 'Water just to the top layer of stones',
    vibratory: 'Only so much water that every stone stays wet, without a pool',
  },
  /** Marks beside a line, where it is not common practice. */
  saidBy: { ours: 'our default', owner: 'yours' },

  // Amounts
  borax: 'borax',
  /** The number as it is written, such as "2 ½", and what it stands for. */
  tablespoons: (number: string, count: number) => `${number} ${count > 1 ? 'tablespoons' : 'tablespoon'}`,
  teaspoons: (number: string, count: number) => `${number} ${count > 1 ? 'teaspoons' : 'teaspoon'}`,
  nothing: 'nothing',
  about: (amount: string) => `about ${amount}`,
  amountOf: (amount: string, supply: string) => `${amount} of ${supply}`,
  /** Between the amounts of a charge. */
  with: ', with ',
  /** Of a field; the supply's name begins it. */
  inTablespoons: (supply: string) => `${supply}, tablespoons`,
  inGrams: (supply: string) => `${supply}, grams`,
} as const;
