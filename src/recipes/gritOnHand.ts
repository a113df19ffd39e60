import { STEPS, type Step } from '../grading/steps';
import type { BatchHistory } from '../history/batchHistory';
import type { Day, MachineRecord, RecordId, RunRecord } from '../journal/records';
import { type Charge, chargeOf } from './chargeText';
import { isUsualAt } from './nextGroups';
import { type OwnRecipes, recipeFor } from './ownRecipes';
import { readCharge } from './readCharge';
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
  /** How far it still goes; null where no machine of known load takes it. */
  readonly enough: {
    /** The machine that takes most of it, of those that the supply's steps were run in, or are usually run in. */
    readonly machine: MachineRecord;
    /** Whole charges. */
    readonly charges: number;
  } | null;
}

/** One charge of a batch. */
export interface UsedCharge {
  readonly step: Step;
  readonly machine: RecordId | null;
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
    const about = { step: run.step, machine: machine?.id ?? null };
    const once = { ...about, charge, isAssumed: read === null };
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
 * @param machines - Of the owner.
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
    return [
      {
        ...{ supply, grams, countedOn: counted.day, charges: used.length },
        assumed: used.filter(({ isAssumed }) => isAssumed).length,
        enough: enoughOf(supply, grams, charges, machines, own),
      },
    ];
  });
}

function isAfter({ day, atMs }: UsedCharge, counted: Counted): boolean {
  return day === counted.day ? !(atMs <= counted.atMs) : day > counted.day;
}

function enoughOf(
  supply: Supply,
  grams: number,
  charges: readonly UsedCharge[],
  machines: readonly MachineRecord[],
  own: OwnRecipes,
): OnHand['enough'] {
  const takers = STEPS.flatMap((step) =>
    machinesOf(step, charges, machines).map((machine) => ({
      machine,
      tablespoons: chargeOf(recipeFor(machine, step, own))[supply] ?? 0,
    })),
  );
  const largest = takers.toSorted((a, b) => b.tablespoons - a.tablespoons)[0];
  if (largest === undefined || largest.tablespoons === 0) return null;
  // A hair more, so that what was bought for three charges is enough for three.
  const count = Math.floor(grams / gramsOf(supply, largest.tablespoons) + 1e-9);
  return { machine: largest.machine, charges: count };
}

/** Machines of known load that a step was run in; before its first run, those of its usual kind; else all. */
function machinesOf(
  step: Step,
  charges: readonly UsedCharge[],
  machines: readonly MachineRecord[],
): readonly MachineRecord[] {
  const known = machines.filter((machine) => usualRecipe(machine, step).isScaled);
  const ran = known.filter(({ id }) => charges.some((one) => one.step === step && one.machine === id));
  if (ran.length > 0) return ran;
  const usual = known.filter((machine) => isUsualAt(machine, step));
  return usual.length > 0 ? usual : known;
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
