import { nextTurn } from './nextTurn';
import { tellerOf, type Watch } from './watch';

/**
 * Longest that work goes on before the page has its turn, ms: a third of a frame at 60 Hz, so that what moves goes on
 * moving. Pieces between two calls come on top; tasks of up to 50 ms leave a tap answered within 100 ms (the RAIL model,
 * from memory).
 */
const TURN_MS = 5;

/** Called between pieces of work with the share of it that is done, 0 to 1. */
export interface Pace {
  /**
   * Tells the share, lets the page have its turn when it is due, and stops work that was called off.
   *
   * @throws The signal's reason.
   */
  readonly at: (share: number) => Promise<void>;
  /** The pace of a part of the work that reaches from one share of the whole to another. */
  readonly part: (from: number, to: number) => Pace;
}

/** The pace of work that is watched so; work that nobody watches still lets the page have its turns. */
export function paceOf(watch: Watch = {}): Pace {
  const tell = tellerOf(watch);
  let turnEnds = performance.now() + TURN_MS;
  const at = async (share: number) => {
    tell(share);
    if (performance.now() < turnEnds) return;
    await nextTurn();
    turnEnds = performance.now() + TURN_MS;
    watch.signal?.throwIfAborted();
  };
  return within(at, 0, 1);
}

function within(at: Pace['at'], from: number, to: number): Pace {
  return {
    at: (share) => at(from + share * (to - from)),
    part: (start, end) => within(at, from + start * (to - from), from + end * (to - from)),
  };
}
