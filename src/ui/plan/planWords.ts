import type { Step } from '../../grading/steps';
import type { Filling } from '../../recipes/filling';
import type { Mismatch } from '../../recipes/hardness';
import type { Recipe, SaidBy } from '../../recipes/recipe';
import { onTheScale } from '../../recipes/supplies';
import { type Units, weightWords } from '../../recipes/units';
import { capitalized } from '../../texts/capitalized';
import { withDecimalMark } from '../../texts/plainNumber';
import { speech, texts } from '../../texts/speech';

/** "today", "tomorrow", "in 3 days", "2 days over". */
export function inDaysWords(inDays: number): string {
  const words = texts().plan;
  if (inDays === 0) return words.dueToday;
  if (inDays === 1) return words.dueTomorrow;
  return inDays > 0 ? words.dueIn(inDays) : words.dueOver(-inDays);
}

/** "Tue, Mar 10"; the day itself when it is none. */
export function dayWords(day: string): string {
  const date = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(date.getTime())) return day;
  const form = { weekday: 'short', month: 'short', day: 'numeric', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat(speech().language, form).format(date);
}

/** "14:05" where the person is. */
export function clockWords(ms: number): string {
  const form = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;
  return new Intl.DateTimeFormat(speech().language, form).format(ms);
}

/** "14 stones stay in coarse", "1 stone goes on to medium", "3 stones go back to coarse"; "3 are in coarse" once they turn. */
export function groupWords(count: number, from: Step, step: Step, isTurning: boolean): string {
  const { inStep, staysIn, goesBack, goesTo } = texts().plan;
  if (isTurning) return inStep(count, step);
  if (step === from) return staysIn(count, step);
  return step === 'coarse' ? goesBack(count, step) : goesTo(count, step);
}

/** Why stones should not share a machine. */
export function mismatchWords({ softer, harder }: Mismatch): string {
  const { materials } = texts().verdicts;
  return texts().plan.apart(capitalized(materials[softer]), materials[harder]);
}

/** How long, "7 to 10 days". */
export const spanWords = ({ from, to }: { from: number; to: number }) =>
  texts().plan.span(withDecimalMark(String(from)), withDecimalMark(String(to)));

/** What the amounts are for. */
export function loadWords({ isScaled, forKg, machineType }: Recipe, units: Units): string {
  const { forFullLoad, forEach, forBowl } = texts().plan;
  const load = weightWords(forKg, units);
  if (isScaled) return forFullLoad(load);
  return machineType === 'rotary' ? forEach(load) : forBowl(load);
}

/** How far to fill, and how much water. */
export function roomAndWater({ machineType }: Recipe): readonly { text: string; saidBy: SaidBy }[] {
  const { room, water } = texts().plan;
  const saidBy = machineType === 'rotary' ? 'common-practice' : 'ours';
  return [room[machineType], water[machineType]].map((text) => ({ text, saidBy }));
}

/** What to do with a group and its machine, by how full that is. */
export function fillWords(
  { kind, missingKg, share }: Filling,
  step: Step,
  mayWait: boolean,
  units: Units,
): string {
  const words = texts().plan;
  const weight = weightWords(Math.abs(missingKg), units);
  if (kind === 'full') return words.fillFull;
  if (kind === 'too-full') return words.fillTooMuch(weight);
  return mayWait && share < HARDLY_FULL ? words.fillWaitOrAdd(weight, step) : words.fillAdd(weight, step);
}

/** Below this share of a load it is better to gather more stones first. Our default. */
const HARDLY_FULL = 0.5;

/** "340 g left", "1.2 kg left", "0.75 lb left". */
export function stockWords(grams: number, units: Units): string {
  const inGrams = units.weight === 'kg' && grams < 1000;
  return texts().plan.left(inGrams ? `${onTheScale(grams)} g` : weightWords(grams / 1000, units));
}
