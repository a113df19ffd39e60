import { STEPS } from '../grading/steps';
import type { GritStock } from './gritOnHand';
import type { OwnRecipe, OwnRecipes } from './ownRecipes';
import { SUPPLIES } from './supplies';
import { WASH_OUT_ITEMS, type WashOut } from './washOut';

/** What the owner said about recipes, grit and the wash-out under way; kept with the settings, across visits. */
export interface PlanSettings {
  readonly recipes: OwnRecipes;
  readonly stock: GritStock;
  readonly washOut: WashOut | null;
}

export const FIRST_PLAN_SETTINGS: PlanSettings = { recipes: {}, stock: {}, washOut: null };

/** Most that is believed of an amount, level tablespoons, of a stock, grams, and of days. */
const MOST = { tablespoons: 1000, grams: 1_000_000, days: 365, note: 300 } as const;

/** Takes over what is sound of what was kept; anything else counts as not said. */
export function checkedPlanSettings(kept: unknown): PlanSettings {
  if (!isObject(kept)) return FIRST_PLAN_SETTINGS;
  const recipes = entriesOf(kept.recipes).map(([machine, steps]) => {
    const said = isObject(steps) ? steps : {};
    const own = STEPS.flatMap((step) => {
      const recipe = checkedOwn(said[step]);
      return recipe === null ? [] : [[step, recipe] as const];
    });
    return [machine, Object.fromEntries(own)] as const;
  });
  return {
    recipes: Object.fromEntries(recipes.filter(([, own]) => Object.keys(own).length > 0)),
    stock: checkedStock(kept.stock),
    washOut: checkedWashOut(kept.washOut),
  };
}

function checkedOwn(kept: unknown): OwnRecipe | null {
  if (!isObject(kept)) return null;
  const amounts = SUPPLIES.flatMap((supply) => {
    const said = isObject(kept.tablespoons) ? kept.tablespoons[supply] : undefined;
    return isWithin(said, 0, MOST.tablespoons) ? [[supply, said] as const] : [];
  });
  const days = isObject(kept.days) ? kept.days : {};
  const own: OwnRecipe = {
    ...(amounts.length > 0 ? { tablespoons: Object.fromEntries(amounts) } : {}),
    ...(isWithin(days.from, 0, MOST.days) && isWithin(days.to, days.from, MOST.days)
      ? { days: { from: days.from, to: days.to } }
      : {}),
    ...(typeof kept.note === 'string' && kept.note !== '' ? { note: kept.note.slice(0, MOST.note) } : {}),
  };
  return Object.keys(own).length === 0 ? null : own;
}

function checkedStock(kept: unknown): GritStock {
  const stock = SUPPLIES.flatMap((supply) => {
    const said = isObject(kept) ? kept[supply] : undefined;
    if (!isObject(said)) return [];
    const { grams, day, atMs } = said;
    const isSound =
      isWithin(grams, 0, MOST.grams) &&
      typeof day === 'string' &&
      /^\d{4}-\d\d-\d\d$/.test(day) &&
      isWithin(atMs, 0, Number.MAX_SAFE_INTEGER);
    return isSound ? [[supply, { grams, day, atMs }] as const] : [];
  });
  return Object.fromEntries(stock);
}

function checkedWashOut(kept: unknown): WashOut | null {
  if (!isObject(kept)) return null;
  const [from, to] = [kept.from, kept.to].map((one) => STEPS.find((step) => step === one));
  const { batch, ticked, soapSinceMs } = kept;
  if (typeof batch !== 'string' || from === undefined || to === undefined) return null;
  const done = Array.isArray(ticked) ? ticked : [];
  return {
    ...{ batch, from, to, ticked: WASH_OUT_ITEMS.filter((item) => done.includes(item)) },
    soapSinceMs: isWithin(soapSinceMs, 0, Number.MAX_SAFE_INTEGER) ? soapSinceMs : null,
  };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const entriesOf = (value: unknown) => (isObject(value) ? Object.entries(value) : []);
const isWithin = (value: unknown, least: number, most: number): value is number =>
  typeof value === 'number' && value >= least && value <= most;
