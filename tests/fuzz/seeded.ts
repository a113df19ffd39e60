/** Draws from a stream that is the same for the same seed. */
export interface Seeded {
  /** Evenly spread from 0 up to 1. */
  next(): number;
  /** A whole number from `least` to `most`, both included. */
  whole(least: number, most: number): number;
  /** One of several, each as likely. */
  one<T>(all: readonly T[]): T;
}

/**
 * A stream of random numbers of its own for each case of a run, so that any case can be repeated alone.
 *
 * Source: mulberry32, public domain; from memory.
 */
export function seeded(seed: number, part: number): Seeded {
  let state = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(part + 1, 0x85ebca6b)) | 0;
  const next = () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  return { next, whole, one: (all) => all[whole(0, all.length - 1)]! };
}
