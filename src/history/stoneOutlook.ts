import { flawTally } from '../grading/flawTally';
import { type Forecast, forecast, LEVEL_NOISE, WILL_NOT_CLEAR } from '../grading/forecast';
import type { StepLimits } from '../grading/limits';
import { STEP_FACTS } from '../grading/steps';
import { type SideUp, sideUp } from '../identity/sideUp';
import { densityWords, lengthWords } from '../texts/measures';
import { type Speech, speech, texts } from '../texts/speech';
import { adviceAt } from './adviceAt';
import type { Face, StoneCheck } from './batchHistory';
import { daysBetween } from './daysBetween';
import { joinFaces } from './joinFaces';

/** What is to be expected of a stone in coarse. */
export interface StoneOutlook {
  /**
   * `ready`: it may go on; `clears`: more grinding will do; `stays`: it will not; `too-small`: it would be too small
   * first; `early`: one look tells nothing yet; `other`: its pits and fractures are not what keeps it back.
   */
  readonly kind: 'ready' | 'clears' | 'stays' | 'too-small' | 'early' | 'other';
  /** Days still to grind, with the ends of the 80 % interval; null unless it clears. */
  readonly days: { readonly middle: number; readonly low: number; readonly high: number } | null;
  /** True when the same surface was seen every time; else which side lay up may have made the difference. */
  readonly isFirm: boolean;
  readonly sentence: string;
}

const KINDS = ['pit', 'fracture'] as const;
type Kind = (typeof KINDS)[number];

/** Flaws of a stone as shares of what the step lets pass, 1 being the limit. */
export type FlawLevels = Readonly<Record<Kind, number>>;

/** Loss of ln length per check where a stone's own checks do not tell it. Common practice: one to three per cent a check. */
const USUAL_LOSS = 0.02;
/** A limit of none at all would make every level endless. */
const LEAST_LIMIT = { pit: 0.1, fracture: 0.5 } as const;

/** Flaw levels on sides of a stone, by limits that are the same for all checks compared. */
export function flawLevels(faces: readonly Face[], limits: StepLimits): FlawLevels {
  const { sure, surfaceCm2 } = flawTally(joinFaces(faces.map(({ stone }) => stone)), limits);
  return {
    pit: sure.pit.count / surfaceCm2 / Math.max(LEAST_LIMIT.pit, limits.maxPitsPerCm2),
    fracture: sure.fracture.totalMm / Math.max(LEAST_LIMIT.fracture, limits.maxFractureMm),
  };
}

/**
 * What a stone's checks in coarse say about the next ones: pits and fractures are forecast on their own, and the worse
 * news counts. Only looks at the same surface are put in one series: both sides together when every check has them,
 * else the side that lies up now, without the checks in which the other one did.
 *
 * @param checks - All checks of the stone, the oldest first.
 * @returns Null when it is not in coarse.
 */
export function stoneOutlook(checks: readonly StoneCheck[]): StoneOutlook | null {
  const known = worked.get(checks);
  if (known?.saidIn === speech()) return known.outlook;
  const outlook = outlookOf(checks);
  worked.set(checks, { outlook, saidIn: speech() });
  return outlook;
}

interface Worked {
  readonly outlook: StoneOutlook | null;
  /** What its sentence was said in. */
  readonly saidIn: Speech;
}

/** A page asks for the same stone's outlook several times: in its row, in its verdict and in the batch's. */
const worked = new WeakMap<readonly StoneCheck[], Worked>();

function outlookOf(checks: readonly StoneCheck[]): StoneOutlook | null {
  const coarse = lastCoarse(checks);
  const last = coarse.at(-1);
  if (!last) return null;
  const { limits } = last.check;
  const now = flawLevels(last.faces, limits);
  if (now.pit <= 1 && now.fracture <= 1) {
    const action = last.decision ?? adviceAt(last);
    return plain(action === 'advance' || action === 'finished' ? 'ready' : 'other');
  }
  const { seen, isFirm } = sameSurface(coarse);
  if (seen.length < 2) return plain('early');
  const levels = seen.map(({ faces }) => flawLevels(faces, limits));
  const found = KINDS.filter((kind) => levels.at(-1)![kind] > 1).map((kind) => ({
    kind,
    ...forecast(
      levels.map((level) => level[kind]),
      LEVEL_NOISE[kind],
    )!,
  }));
  if (found.length === 0) return plain('early');
  const staying = found.find(({ neverOdds }) => neverOdds >= WILL_NOT_CLEAR);
  if (staying) return { ...stays(staying.kind, staying, limits, seen.length), isFirm };
  const slowest = found.reduce((a, b) => ((b.checks ?? 0) > (a.checks ?? 0) ? b : a));
  return { ...clears(slowest, coarse, limits), isFirm };
}

interface Look {
  readonly check: StoneCheck['check'];
  readonly faces: readonly Face[];
}

/** Looks at one and the same surface, the newest last. */
function sameSurface(checks: readonly StoneCheck[]): { seen: Look[]; isFirm: boolean } {
  if (checks.every(({ faces }) => faces.length > 1)) return { seen: [...checks], isFirm: true };
  const up = checks.at(-1)!.faces[0];
  let isFirm = true;
  const seen = checks.flatMap(({ check, faces }): Look[] => {
    const sides = faces.map((face) => ({ face, side: face === up ? 'same' : sideOf(face, up) }));
    const same = sides.find(({ side }) => side === 'same') ?? sides.find(({ side }) => side === 'unknown');
    if (!same) return [];
    if (same.side === 'unknown') isFirm = false;
    return [{ check, faces: [same.face] }];
  });
  return { seen, isFirm };
}

function sideOf({ stone: a }: Face, { stone: b }: Face): SideUp {
  return a.look && b.look ? sideUp(a.look.silhouette, b.look.silhouette) : 'unknown';
}

/** An outlook that no number belongs to. */
const plain = (kind: 'ready' | 'other' | 'early'): StoneOutlook => ({
  ...{ kind, days: null, isFirm: true },
  sentence: texts().history[kind],
});

/** Checks in coarse since it was last put there. */
function lastCoarse(checks: readonly StoneCheck[]): readonly StoneCheck[] {
  const since = checks.findLastIndex(({ check }) => check.step !== 'coarse');
  return checks.slice(since + 1);
}

function stays(
  kind: Kind,
  { floor }: Pick<Forecast, 'floor'>,
  limits: StepLimits,
  checkCount: number,
): StoneOutlook {
  const limit = kind === 'pit' ? limits.maxPitsPerCm2 : limits.maxFractureMm;
  const words = kind === 'pit' ? densityWords : lengthWords;
  const endsAt = Math.max(1, floor) * Math.max(LEAST_LIMIT[kind], limit);
  const sentence = texts().history.stays(kind, checkCount, words(endsAt), words(limit));
  return { kind: 'stays', days: null, isFirm: true, sentence };
}

function clears(
  { checks, interval }: Forecast,
  coarse: readonly StoneCheck[],
  limits: StepLimits,
): StoneOutlook {
  const perCheck = daysPerCheck(coarse);
  const [middle, low, high] = [checks ?? 0, interval?.[0] ?? 0, interval?.[1] ?? 0].map(
    (count) => count * perCheck,
  ) as [number, number, number];
  const days = { middle, low, high };
  const endsAtMm = lastLength(coarse) * Math.exp(-lossPerCheck(coarse) * (checks ?? 0));
  if (endsAtMm < limits.minLengthMm) {
    const { tooSmallFirst } = texts().history;
    const sentence = tooSmallFirst(weeks(days), lengthWords(endsAtMm), lengthWords(limits.minLengthMm));
    return { kind: 'too-small', days: null, isFirm: true, sentence };
  }
  return { kind: 'clears', days, isFirm: true, sentence: texts().history.clears(weeks(days)) };
}

/** "about 3 weeks (2 to 5)"; under a week in days. */
export function weeks({ middle, low, high }: { middle: number; low: number; high: number }): string {
  const inDays = high < 14;
  const count = (days: number) => Math.max(1, Math.round(inDays ? days : days / 7));
  const [from, to] = [Math.round(inDays ? low : low / 7), count(high)];
  return texts().history.about(count(middle), inDays ? 'day' : 'week', from === to ? null : [from, to]);
}

/** Median days between checks; by common practice where there is only one. */
export function daysPerCheck(checks: readonly StoneCheck[]): number {
  const gaps = checks
    .slice(1)
    .map(({ check }, i) => daysBetween(checks[i]!.check.day, check.day))
    .filter((days) => days > 0)
    .sort((a, b) => a - b);
  const [from, to] = STEP_FACTS.coarse.rotaryDays;
  return gaps[gaps.length >> 1] ?? (from + to) / 2;
}

const lengthOf = ({ faces }: StoneCheck) => Math.max(...faces.map(({ stone }) => stone.lengthMm));
const lastLength = (checks: readonly StoneCheck[]) => lengthOf(checks.at(-1)!);

/** Slope of ln length by least squares, never negative; what is usual counts as much as two checks. */
function lossPerCheck(checks: readonly StoneCheck[]): number {
  const middle = (checks.length - 1) / 2;
  let [rise, run] = [-USUAL_LOSS * USUAL_WEIGHT, USUAL_WEIGHT];
  checks.forEach((seen, t) => {
    rise += (t - middle) * Math.log(lengthOf(seen));
    run += (t - middle) ** 2;
  });
  return Math.max(0, -rise / run);
}
const USUAL_WEIGHT = 0.5;
