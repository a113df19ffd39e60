import { STEPS, type Step } from '../grading/steps';
import { texts } from '../texts/speech';
import { ML_PER_TABLESPOON } from './spoons';

/** What is used up: the abrasive of each step, under the step's name, and borax. */
export type Supply = Step | 'borax';

export const SUPPLIES: readonly Supply[] = [...STEPS, 'borax'];

/** How much a level spoon of it weighs. */
export interface SupplyFacts {
  /** Of the dry powder, loosely filled, g/ml. */
  readonly gramsPerMl: number;
  readonly source: string;
}

const ESTIMATE = 'our estimate, good to a fifth: grains of 3.2 g/cm³ fill less of a spoon the finer they are';

/**
 * Loose bulk densities. A spoon levels off differently with every powder, so grams are good to a fifth; weigh a level
 * spoon of your own to know better.
 */
export const SUPPLY_FACTS: Readonly<Record<Supply, SupplyFacts>> = {
  coarse: { gramsPerMl: 1.45, source: ESTIMATE },
  medium: { gramsPerMl: 1.35, source: ESTIMATE },
  fine: { gramsPerMl: 1.15, source: ESTIMATE },
  prepolish: { gramsPerMl: 1, source: ESTIMATE },
  polish: {
    gramsPerMl: 0.9,
    source:
      'our estimate, good to a third: bulk tables give alumina fines 35 lb/ft³ and coarser alumina 65 lb/ft³',
  },
  borax: {
    gramsPerMl: 0.85,
    source: 'tables of bulk densities: fine borax 53 to 55 lb/ft³',
  },
};

/** What it is called, within a sentence. */
export const supplyName = (supply: Supply): string =>
  supply === 'borax' ? texts().plan.borax : texts().verdicts.grits[supply];

/** Grams of a level measure; good to a fifth. */
export const gramsOf = (supply: Supply, tablespoons: number): number =>
  tablespoons * ML_PER_TABLESPOON * SUPPLY_FACTS[supply].gramsPerMl;

/** The other way round. */
export const tablespoonsOf = (supply: Supply, grams: number): number =>
  grams / (ML_PER_TABLESPOON * SUPPLY_FACTS[supply].gramsPerMl);

/** Grams as one reads them off a kitchen scale: whole ones, fives from 20, tens from 200; anything above 0 is 1 at least. */
export function onTheScale(grams: number): number {
  const grid = grams < 20 ? 1 : grams < 200 ? 5 : 10;
  return grams > 0 ? Math.max(1, grid * Math.round(grams / grid)) : 0;
}
