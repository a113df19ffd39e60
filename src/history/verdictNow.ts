import { flawTally } from '../grading/flawTally';
import { LEVEL_NOISE } from '../grading/forecast';
import type { StoneGrade } from '../grading/gradeStone';
import { gradeStone } from '../grading/gradeStone';
import type { Limits } from '../grading/limits';
import { MATERIALS, type Material, type MaterialName } from '../grading/materials';
import { ACTIONS_BEST_FIRST, type Action } from '../grading/opinion';
import type { Verdict } from '../grading/verdict';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import type { StoneCheck } from './batchHistory';
import { checkGrade } from './checkGrade';
import { joinFaces } from './joinFaces';
import { flawLevels, stoneOutlook } from './stoneOutlook';

/** Where stones of a material ended in this journal: 60° gloss, a quarter of them below. */
export interface UsualEnd {
  readonly lowerQuartileGu60: number;
  readonly stones: number;
}

/** With fewer finished stones of a material nothing is said of its usual end. */
export const LEAST_FOR_USUAL_END = 5;

/**
 * The verdict of a stone's last check, with all its checks in mind.
 *
 * @param checks - All of the stone, the oldest first; at least one.
 * @param material - Null when nothing was said.
 * @param usualEnd - Of the same material in this journal; null with too few.
 */
export function verdictNow(
  checks: readonly StoneCheck[],
  material: MaterialName | null,
  usualEnd: UsualEnd | null,
): Verdict {
  const last = checks.at(-1);
  if (!last) throw new RangeError('A verdict needs at least one check.');
  const grade = checkGrade(last, material);
  const base = grade.verdict;
  const said =
    openedLate(checks) ?? pointless(checks, base) ?? ended(checks, grade, material, usualEnd) ?? null;
  if (said === null) return withHint(base, checks, usualEnd, grade);
  return { action: said.action, reasons: [said.reason, ...base.reasons] };
}

interface Said {
  readonly action: Action;
  readonly reason: string;
}

/** Grinding on that brings nothing. */
function pointless(checks: readonly StoneCheck[], base: Verdict): Said | null {
  if (base.action !== 'repeat' && base.action !== 'back-to-coarse') return null;
  const outlook = stoneOutlook(checks);
  if ((outlook?.kind !== 'stays' && outlook?.kind !== 'too-small') || !outlook.isFirm) return null;
  return { action: 'set-aside', reason: outlook.sentence };
}

/**
 * A rise of so many scales of the noise between two checks is none of the camera's: the noise has heavy tails, since now
 * and then a whole fracture is missed and found again.
 */
const SURE_RISE = 10;

/** Fractures that grew, or pits that came, in a step that does not make any. */
function openedLate(checks: readonly StoneCheck[]): Said | null {
  const [before, last] = [checks.at(-2), checks.at(-1)!];
  if (!before || last.check.step === 'coarse') return null;
  const { limits, step } = last.check;
  const [then, now] = [flawLevels(before.faces, limits), flawLevels(last.faces, limits)];
  const rise = (kind: 'pit' | 'fracture') =>
    (Math.sqrt(now[kind]) - Math.sqrt(then[kind])) / (LEVEL_NOISE[kind].fresh * Math.SQRT2);
  const kind = (['fracture', 'pit'] as const).find((one) => now[one] > 1 && rise(one) > SURE_RISE);
  if (kind === undefined) return null;
  const reason = texts().history.opened(kind, before.check.day, step);
  return { action: 'back-to-coarse', reason };
}

/** A stone that shines as much as its kind does is finished, though short of the ceiling. */
function ended(
  checks: readonly StoneCheck[],
  { gloss, verdict }: StoneGrade,
  material: MaterialName | null,
  usualEnd: UsualEnd | null,
): Said | null {
  const last = checks.at(-1)!;
  if (last.check.step !== 'polish' || gloss === null || verdict.action !== 'repeat') return null;
  if (!isOnlyDull(last, material)) return null;
  const words = texts().history;
  const reads = plainNumber(gloss.gu60);
  if (usualEnd && gloss.gu60 >= usualEnd.lowerQuartileGu60) {
    const reason = words.usualEnd(material, usualEnd.stones, plainNumber(usualEnd.lowerQuartileGu60), reads);
    return { action: 'finished', reason };
  }
  if (material === null) return null;
  const { practicalFinish }: Material = MATERIALS[material];
  const before = checks.at(-2);
  if (practicalFinish !== gloss.finish || before?.check.step !== 'polish') return null;
  const earlier = checkGrade(before, material).gloss;
  if (earlier === null || gloss.alpha < 0.9 * earlier.alpha) return null;
  return { action: 'finished', reason: words.polishBroughtNothing(material, gloss.finish) };
}

/** True when nothing but its gloss keeps it from being finished. */
function isOnlyDull(seen: StoneCheck, material: MaterialName | null): boolean {
  const { step, limits, mmPerPx } = seen.check;
  const anyGloss = Object.fromEntries([[step, { ...limits, minShareOfCeiling: 0 }]]) as Limits;
  const stone = joinFaces(seen.faces.map(({ stone: face }) => face));
  const settings = { step, material: material ?? seen.check.material, limits: anyGloss, mmPerPx };
  return gradeStone(stone, settings).verdict.action === 'finished';
}

/** What earlier checks add without changing the verdict. */
function withHint(
  base: Verdict,
  checks: readonly StoneCheck[],
  usualEnd: UsualEnd | null,
  { gloss }: StoneGrade,
): Verdict {
  const words = texts().history;
  const hints: string[] = [];
  const isPolished = checks.at(-1)!.check.step === 'polish';
  if (
    isPolished &&
    usualEnd &&
    gloss &&
    base.action === 'repeat' &&
    gloss.gu60 < usualEnd.lowerQuartileGu60
  ) {
    hints.push(words.underPolished(usualEnd.stones, plainNumber(usualEnd.lowerQuartileGu60)));
  }
  if (pitsStand(checks) && ACTIONS_BEST_FIRST.indexOf(base.action) >= ACTIONS_BEST_FIRST.indexOf('repeat')) {
    hints.push(words.pitsStand);
  }
  return hints.length === 0 ? base : { ...base, reasons: [...base.reasons, ...hints] };
}

/** Three checks on end in coarse without fewer pits. */
function pitsStand(checks: readonly StoneCheck[]): boolean {
  const recent = checks.slice(-4);
  if (recent.length < 4 || recent.some(({ check }) => check.step !== 'coarse')) return false;
  const counts = recent.map(({ check, faces }) => {
    const { sure, surfaceCm2 } = flawTally(joinFaces(faces.map(({ stone }) => stone)), check.limits);
    return sure.pit.count / surfaceCm2;
  });
  return counts[0]! > 0 && counts.slice(1).every((count) => count >= 0.9 * counts[0]!);
}
