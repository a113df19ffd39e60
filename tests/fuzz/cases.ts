import { type Base, KINDS } from './bases';
import { type Mutation, mutate } from './mutate';
import { seeded } from './seeded';

/** Trays take seconds to grade: one case in so many starts from one. */
const TRAY_EVERY = 20;

/** One mutated file of a run. */
export interface Case extends Mutation {
  readonly number: number;
  readonly base: Base;
}

/**
 * The case of a number: the same bytes for the same seed and bases.
 *
 * @param kinds - What is mutated, in turn.
 */
export function caseOf(
  number: number,
  seed: number,
  bases: readonly Base[],
  kinds: readonly string[] = KINDS,
): Case {
  const kind = kinds[number % kinds.length];
  const random = seeded(seed, number);
  const wantsTray = Math.floor(number / kinds.length) % TRAY_EVERY === 0;
  const base = random.one(bases.filter((one) => one.kind === kind && one.isTray === wantsTray));
  return { number, base, ...mutate(base, bases, random) };
}
