/** Steps of tumbling in their order. */
export const STEPS = ['coarse', 'medium', 'fine', 'prepolish', 'polish'] as const;

export type Step = (typeof STEPS)[number];

/** What is usual at a step. */
export interface StepFacts {
  readonly title: string;
  /** Grit and what it is made of. */
  readonly grit: string;
  /** Usual days in a rotary barrel; at coarse, days from one check and charge to the next. */
  readonly rotaryDays: readonly [from: number, to: number];
  /** Usual days in a vibratory bowl; null where the step is ground in a barrel. */
  readonly vibratoryDays: number | null;
  /** Usual charge. */
  readonly charge: string;
  /** Roughest surface that counts as done: GGX roughness. Our default. */
  readonly roughestAlpha: number;
  /** Smoother than this the step cannot have made it, so it is wet; null where it can. Our default. */
  readonly wetBelowAlpha: number | null;
}

/**
 * Grits, days and charges: common practice. Vibratory charges are for a bowl of about 18 lb.
 * Roughness has no published source: our defaults, set so that ranges of neighboring steps overlap.
 */
export const STEP_FACTS: Readonly<Record<Step, StepFacts>> = {
  coarse: {
    title: 'Coarse',
    grit: '60/90 silicon carbide',
    rotaryDays: [7, 10],
    vibratoryDays: null,
    charge:
      '1 level tablespoon per pound of stones, barrel two thirds to three quarters full, water just to the top layer',
    roughestAlpha: 1,
    wetBelowAlpha: 0.12,
  },
  medium: {
    title: 'Medium',
    grit: '220 silicon carbide',
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    charge: '2 tablespoons',
    roughestAlpha: 0.5,
    wetBelowAlpha: 0.06,
  },
  fine: {
    title: 'Fine',
    grit: '600 silicon carbide',
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    charge: '1 tablespoon, with 1 tablespoon of borax',
    roughestAlpha: 0.25,
    wetBelowAlpha: 0.025,
  },
  prepolish: {
    title: 'Pre-polish',
    grit: '1500 silicon carbide',
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    charge: '1 tablespoon, with 1 tablespoon of borax',
    roughestAlpha: 0.12,
    wetBelowAlpha: null,
  },
  polish: {
    title: 'Polish',
    grit: 'aluminum oxide polish',
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    charge: '1 tablespoon, with 1 tablespoon of borax',
    roughestAlpha: 0.03,
    wetBelowAlpha: null,
  },
};
