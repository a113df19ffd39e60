import type { Step } from '../grading/steps';
import type { MachineRecord, RecordId } from '../journal/records';
import { type Recipe, usualRecipe } from './recipe';
import { SUPPLIES, type Supply } from './supplies';

/** What the owner does differently at a step of one machine; what is left out stays as usual. */
export interface OwnRecipe {
  /** Level tablespoons, as they go into this very machine; 0 leaves it out. */
  readonly tablespoons?: Readonly<Partial<Record<Supply, number>>>;
  readonly days?: { readonly from: number; readonly to: number };
  readonly note?: string;
}

/** By machine and step. */
export type OwnRecipes = Readonly<Record<RecordId, Readonly<Partial<Record<Step, OwnRecipe>>>>>;

/**
 * Puts the owner's own amounts, days and remark over the usual ones.
 *
 * @returns Amounts in the order of `SUPPLIES`.
 */
export function withOwn(usual: Recipe, own: OwnRecipe): Recipe {
  const amounts = SUPPLIES.flatMap((supply) => {
    const said = own.tablespoons?.[supply];
    if (said === undefined) return usual.amounts.filter((one) => one.supply === supply);
    return said > 0 ? [{ supply, tablespoons: said, saidBy: 'owner' as const }] : [];
  });
  const days = own.days === undefined ? usual.days : { ...own.days, saidBy: 'owner' as const };
  return { ...usual, amounts, days, note: own.note ?? usual.note };
}

/** The recipe of a machine and step: what is usual, with the owner's own over it. */
export function recipeFor(machine: MachineRecord, step: Step, own: OwnRecipes): Recipe {
  return withOwn(usualRecipe(machine, step), own[machine.id]?.[step] ?? {});
}

/** The owner's recipes with one of them said anew; null takes it back, so that the usual one counts. */
export function sayOwn(own: OwnRecipes, machine: RecordId, step: Step, said: OwnRecipe | null): OwnRecipes {
  const { [step]: _, ...others } = own[machine] ?? {};
  const ofMachine = said === null ? others : { ...others, [step]: said };
  const { [machine]: __, ...rest } = own;
  return Object.keys(ofMachine).length === 0 ? rest : { ...rest, [machine]: ofMachine };
}
