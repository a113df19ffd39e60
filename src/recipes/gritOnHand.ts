import { STEPS } from '../grading/steps';
import type { BatchHistory } from '../history/batchHistory';
import type { Day, MachineRecord, RunRecord } from '../journal/records';
import { type Charge, chargeOf, readCharge } from './chargeText';
import { type OwnRecipes, recipeFor } from './ownRecipes';
import { usualRecipe } from './recipe';
import { gramsOf, SUPPLIES, type Supply } from './supplies';

/** What the owner had of a supply when it was last weighed or guessed. */
export interface Counted {
  readonly grams: number;
  readonly day: Day;
  /** When it was said, milliseconds since 1970: runs of that same day count when they were written down later. */
  readonly atMs: number;
}

export type GritStock = Readonly<Partial<Record<Supply, Counted>>>;

/** What is left of a supply. */
export interface OnHand {
  readonly supply: Supply;
  /** 0 or more. */
  readonly grams: number;
  readonly countedOn: Day;
  /** Charges since it was counted. */
  readonly charges: number;
  /** Of these, those whose amount was not written down, so that the machine's recipe was taken. */
  readonly assumed: number;
  /** Whole charges that it is still enough for in the machine that takes most; null where nothing takes it. */
  readonly enoughFor: number | null;
}

/** One charge of a batch. */
export interface UsedCharge {
  readonly day: Day;
  /** Milliseconds since 1970 at which its run was written down; NaN when the record does not tell. */
  readonly atMs: number;
  /** Null where nothing is known of it, neither words nor machine. */
  readonly charge: Charge | null;
  readonly isAssumed: boolean;
}

/**
 * Every charge of a batch: one for each run, and in coarse one for each later check of the run, after which it is
 * charged anew (common practice), save the one it was washed out on.
 */
export function chargesOf(
  { batch, runs, checks }: Pick<BatchHistory, 'batch' | 'runs' | 'checks'>,
  machines: readonly MachineRecord[],
  own: OwnRecipes,
): UsedCharge[] {
  return runs.flatMap((run): UsedCharge[] => {
    const read = readCharge(run.charge, run.step);
    const machine = machines.find(({ id }) => id === (run.machine ?? batch.machine));
    const charge = read ?? (machine === undefined ? null : chargeOf(recipeFor(machine, run.step, own)));
    const once = { charge, isAssumed: read === null };
    const again = rechargeDays(run, checks).map((day) => ({ ...once, day, atMs: Number.NaN }));
    return [{ ...once, day: run.startedOn, atMs: momentOf(run.id) }, ...again];
  });
}

function rechargeDays(run: RunRecord, checks: BatchHistory['checks']): Day[] {
  if (run.step !== 'coarse') return [];
  const days = checks.flatMap(({ check }) => (check.step === 'coarse' ? [check.day] : []));
  return [...new Set(days)].filter(
    (day) => day > run.startedOn && (run.endedOn === null || day < run.endedOn),
  );
}

/**
 * What is left of everything that was counted.
 *
 * @param charges - Of all batches.
 * @param machines - Whose charges it is to be enough for.
 */
export function gritOnHand(
  stock: GritStock,
  charges: readonly UsedCharge[],
  machines: readonly MachineRecord[],
  own: OwnRecipes,
): OnHand[] {
  return SUPPLIES.flatMap((supply): OnHand[] => {
    const counted = stock[supply];
    if (counted === undefined) return [];
    const used = charges.filter((one) => one.charge?.[supply] !== undefined && isAfter(one, counted));
    const usedGrams = used.reduce((sum, { charge }) => sum + gramsOf(supply, charge?.[supply] ?? 0), 0);
    const grams = Math.max(0, counted.grams - usedGrams);
    const largest = largestCharge(supply, machines, own);
    return [
      {
        ...{ supply, grams, countedOn: counted.day, charges: used.length },
        assumed: used.filter(({ isAssumed }) => isAssumed).length,
        // A hair more, so that what was bought for three charges is enough for three.
        enoughFor: largest === 0 ? null : Math.floor(grams / gramsOf(supply, largest) + 1e-9),
      },
    ];
  });
}

function isAfter({ day, atMs }: UsedCharge, counted: Counted): boolean {
  return day === counted.day ? !(atMs <= counted.atMs) : day > counted.day;
}

/** Tablespoons that the machine takes which takes most; machines of unknown load do not count. */
function largestCharge(supply: Supply, machines: readonly MachineRecord[], own: OwnRecipes): number {
  const amounts = machines
    .filter((machine) => usualRecipe(machine, 'coarse').isScaled)
    .flatMap((machine) => STEPS.map((step) => chargeOf(recipeFor(machine, step, own))[supply] ?? 0));
  return Math.max(0, ...amounts);
}

/** Crockford's base 32. */
const DIGITS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/**
 * When a record was written down: the first ten letters of its ULID.
 *
 * @returns Milliseconds since 1970; NaN for what is no ULID.
 * @see The ULID specification, github.com/ulid/spec.
 */
export function momentOf(id: string): number {
  if (!/^[0-7][0-9A-HJKMNP-TV-Z]{25}$/.test(id)) return Number.NaN;
  return [...id.slice(0, 10)].reduce((sum, letter) => 32 * sum + DIGITS.indexOf(letter), 0);
}
