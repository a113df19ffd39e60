import type { Action } from '../../grading/opinion';
import { ACTION_ORDER } from '../../picture/actionMarks';
import type { GradedPhoto } from '../../state/gradePhoto';

/** One stop on the way through the tray: a whole pile, or one stone of it. */
export interface BenchStop {
  readonly action: Action;
  /** Numbers of all stones of the pile, in reading order. */
  readonly pile: readonly number[];
  /** Null at the pile as a whole. */
  readonly stone: number | null;
}

/** The way through a tray, pile by pile and within each stone by stone, in the order in which piles are listed. */
export function benchStops({ report, grades }: GradedPhoto): BenchStop[] {
  const actionOf = new Map(grades.map(({ id, verdict }) => [id, verdict.action]));
  return ACTION_ORDER.flatMap((action) => {
    const pile = report.stones.map(({ id }) => id).filter((id) => actionOf.get(id) === action);
    if (pile.length === 0) return [];
    return [{ action, pile, stone: null }, ...pile.map((stone): BenchStop => ({ action, pile, stone }))];
  });
}

/**
 * Where a step leads.
 *
 * @param at - Index of the stop, 0 or more.
 * @param step - 1 for the next stop, −1 for the one before, 'pile' for the next pile; the last is followed by the first.
 */
export function stopAfter(stops: readonly BenchStop[], at: number, step: 1 | -1 | 'pile'): number {
  if (step !== 'pile') return (at + step + stops.length) % stops.length;
  const next = stops.findIndex(({ stone }, index) => index > at && stone === null);
  return Math.max(0, next);
}
