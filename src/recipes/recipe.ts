import { STEP_FACTS, type Step } from '../grading/steps';
import type { MachineRecord } from '../journal/records';
import { KG_PER_LB } from './spoons';
import type { Supply } from './supplies';

/** Who says so: the trade, without a published source; we, where the trade gives nothing; or the owner. */
export type SaidBy = 'common-practice' | 'ours' | 'owner';

export interface Amount {
  readonly supply: Supply;
  /** Level, not rounded; above 0. */
  readonly tablespoons: number;
  readonly saidBy: SaidBy;
}

/** What goes into a machine for a step, and for how long. */
export interface Recipe {
  readonly step: Step;
  readonly machineType: MachineRecord['type'];
  /** Stones and filler that the amounts are for. */
  readonly forKg: number;
  /** False when the machine's load is not known: then the amounts are for a pound in a barrel, or for a bowl of 18 lb. */
  readonly isScaled: boolean;
  /** Empty where nothing is usual: coarse is ground in a barrel. */
  readonly amounts: readonly Amount[];
  /** Fewest and most days; null where nothing is usual. */
  readonly days: { readonly from: number; readonly to: number; readonly saidBy: SaidBy } | null;
  /** Share of the barrel's room that stones and filler take; null for a bowl, which is filled to its rated load. */
  readonly filledTo: readonly [from: number, to: number] | null;
  /** The owner's own remark; may be empty. */
  readonly note: string;
}

/** The bowl that the usual amounts are for, kg: 18 lb. Source: common practice. */
export const USUAL_BOWL_KG = 18 * KG_PER_LB;

/** Barrels are filled so far. Source: common practice. */
const BARREL_FILLED = [2 / 3, 3 / 4] as const;

/** Level tablespoons for the usual bowl. Source: common practice. */
const BOWL: Readonly<Record<Step, Partial<Record<Supply, number>>>> = {
  coarse: {},
  medium: { medium: 2 },
  fine: { fine: 1, borax: 1 },
  prepolish: { prepolish: 1, borax: 1 },
  polish: { polish: 1, borax: 1 },
};

/** Level tablespoons per pound of stones. Source: common practice for coarse; ours, the same, for the finer steps. */
const PER_POUND = 1;

/**
 * What is usual for a step in a machine: amounts grow with its load.
 *
 * @param machine - `capacityKg` is its rated load; null, or what is no load, gives the amounts unscaled.
 * @see `STEP_FACTS`: common practice, no published source.
 */
export function usualRecipe(machine: Pick<MachineRecord, 'type' | 'capacityKg'>, step: Step): Recipe {
  const { type, capacityKg } = machine;
  const isScaled = capacityKg !== null && capacityKg > 0 && Number.isFinite(capacityKg);
  const about = { step, machineType: type, isScaled, note: '' };
  const { rotaryDays, vibratoryDays } = STEP_FACTS[step];
  if (type === 'rotary') {
    const forKg = isScaled ? capacityKg : KG_PER_LB;
    const saidBy = step === 'coarse' ? 'common-practice' : 'ours';
    return {
      ...about,
      forKg,
      amounts: [{ supply: step, tablespoons: (PER_POUND * forKg) / KG_PER_LB, saidBy }],
      days: { from: rotaryDays[0], to: rotaryDays[1], saidBy: 'common-practice' },
      filledTo: BARREL_FILLED,
    };
  }
  const forKg = isScaled ? capacityKg : USUAL_BOWL_KG;
  const usual = Object.entries(BOWL[step]) as [Supply, number][];
  return {
    ...about,
    forKg,
    amounts: usual.map(([supply, tablespoons]) => ({
      ...{ supply, saidBy: 'common-practice' },
      tablespoons: (tablespoons * forKg) / USUAL_BOWL_KG,
    })),
    days:
      vibratoryDays === null ? null : { from: vibratoryDays, to: vibratoryDays, saidBy: 'common-practice' },
    filledTo: null,
  };
}
