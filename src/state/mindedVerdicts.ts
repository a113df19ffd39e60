import type { Action } from '../grading/opinion';
import type { Verdict } from '../grading/verdict';
import { type BatchHistory, placeKey } from '../history/batchHistory';
import { usualEndOf, type usualEnds } from '../history/usualEnds';
import { verdictNow } from '../history/verdictNow';
import type { RecordId } from '../journal/records';
import { texts } from '../texts/speech';
import type { GradedPhoto } from './gradePhoto';
import type { KeptAs } from './keepCheck';

/** What a kept photo's stone is, and its verdict with all its checks in mind. */
export interface MindedStone {
  readonly stone: RecordId;
  readonly name: string;
  readonly checkCount: number;
  /** What the photo alone advised when it was kept. */
  readonly photoAction: Action;
  readonly verdict: Verdict;
  /** What the owner did with it at this check; null when nothing was said. */
  readonly decision: Action | null;
}

/** Stones of a kept photo by their places in it. */
export function mindedVerdicts(
  { photo, check }: KeptAs,
  { checks, stones }: BatchHistory,
  ends: ReturnType<typeof usualEnds>,
): Map<number, MindedStone> {
  const kept = checks.find((one) => one.check.id === check);
  const places = kept?.photos.find(({ id }) => id === photo)?.stones ?? [];
  return new Map(
    places.flatMap(({ place, action }) => {
      const history = stones.find(({ stone }) => stone.id === kept?.stoneAt.get(placeKey(photo, place)));
      const upToNow = history?.checks.slice(
        0,
        history.checks.findIndex((seen) => seen.check.id === check) + 1,
      );
      if (!history || !upToNow || upToNow.length === 0) return [];
      const { id, name, material } = history.stone;
      const usualEnd = usualEndOf(ends, material);
      const verdict = verdictNow(upToNow, material, usualEnd);
      const seen = { stone: id, name, checkCount: upToNow.length, photoAction: action };
      const { decision } = upToNow.at(-1)!;
      return [[place, { ...seen, verdict, decision }] as const];
    }),
  );
}

interface Minded {
  readonly stones: ReadonlyMap<number, MindedStone>;
  readonly graded: GradedPhoto;
}

const last = new WeakMap<GradedPhoto, Minded>();

/**
 * A graded photo whose verdicts have its stones' earlier checks and other sides in mind. A stone that is graded
 * otherwise than when it was kept, since step or limits were changed, keeps its present grade; what the owner decided
 * stands above all of it.
 *
 * @returns The same object as before for the same photo and stones.
 */
export function withMinded(graded: GradedPhoto, stones: ReadonlyMap<number, MindedStone>): GradedPhoto {
  const known = last.get(graded);
  if (known?.stones === stones) return known.graded;
  const grades = graded.grades.map((grade) => {
    const own = stones.get(grade.id);
    if (own?.decision) return { ...grade, verdict: decided(own.decision, own.verdict) };
    return own?.photoAction === grade.verdict.action ? { ...grade, verdict: own.verdict } : grade;
  });
  const whole = { ...graded, grades };
  last.set(graded, { stones, graded: whole });
  return whole;
}

function decided(action: Action, advised: Verdict): Verdict {
  if (action === advised.action) return advised;
  const { journal, verdicts } = texts();
  const reason = journal.stone.decidedSo(verdicts.actionsWithin[advised.action]);
  return { action, reasons: [reason, ...advised.reasons] };
}
