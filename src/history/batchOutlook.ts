import { texts } from '../texts/speech';
import type { BatchHistory, StoneCheck, StoneHistory } from './batchHistory';
import { daysPerCheck, type StoneOutlook, stoneOutlook, weeks } from './stoneOutlook';

/** What share of a batch in coarse is ready when. */
export interface BatchOutlook {
  /** Stones still in coarse that are to be planned for. */
  readonly inCoarse: number;
  readonly ready: number;
  /** Stones that will hardly clear or be too small first. */
  readonly staying: number;
  /** Stones expected to be ready after so many days, those ready now included; one step for each check. */
  readonly readyAfter: readonly { readonly days: number; readonly stones: number }[];
  readonly sentence: string;
}

/** Looked ahead so many checks. */
const AHEAD = 6;

/** Puts the outlooks of a batch's stones together; null when none is in coarse. */
export function batchOutlook({
  stones,
  checks,
}: Pick<BatchHistory, 'stones' | 'checks'>): BatchOutlook | null {
  const inCoarse = stones.filter(isInCoarse);
  const outlooks = inCoarse.map((stone) => stoneOutlook(stone.checks)!);
  if (outlooks.length === 0) return null;
  const count = (kinds: readonly StoneOutlook['kind'][]) =>
    outlooks.filter(({ kind }) => kinds.includes(kind)).length;
  const [ready, staying] = [count(['ready']), count(['stays', 'too-small'])];
  const perCheck = daysPerCheck(
    checks.map(({ check }) => ({ check }) as StoneCheck).filter(({ check }) => check.step === 'coarse'),
  );
  const waits = outlooks.flatMap(({ days }) => (days === null ? [] : [days]));
  const readyAfter = Array.from({ length: AHEAD + 1 }, (_, k) => {
    const days = k * perCheck;
    return { days, stones: ready + waits.filter(({ middle }) => middle <= days).length };
  });
  return {
    inCoarse: outlooks.length,
    ready,
    staying,
    readyAfter,
    sentence: sentenceOf(outlooks, ready, staying),
  };
}

/** Not pulled out, not yet in finer grit. */
function isInCoarse({ checks }: StoneHistory): boolean {
  const last = checks.at(-1);
  return last?.check.step === 'coarse' && last.decision !== 'set-aside' && last.decision !== 'finished';
}

function sentenceOf(outlooks: readonly StoneOutlook[], ready: number, staying: number): string {
  const words = texts().history;
  const parts = [words.batchReady(ready, outlooks.length)];
  const waits = outlooks.flatMap(({ days }) => (days === null ? [] : [days]));
  if (waits.length > 0) {
    const half = waits.toSorted((a, b) => a.middle - b.middle)[waits.length >> 1]!;
    parts.push(words.batchClears(waits.length, weeks(half)));
  }
  if (staying > 0) parts.push(words.batchStays(staying));
  const others = outlooks.filter(({ kind }) => kind === 'other').length;
  if (others > 0) parts.push(words.batchOthers(others));
  const early = outlooks.filter(({ kind }) => kind === 'early').length;
  if (early > 0) parts.push(words.batchEarly(early));
  return `${parts.join('; ')}.`;
}
