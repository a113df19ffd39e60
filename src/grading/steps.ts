/** Steps of tumbling in their order. */
export const STEPS = ['coarse', 'medium', 'fine', 'prepolish', 'polish'] as const;

export type Step = (typeof STEPS)[number];

/** What is usual at a step; its name, grit and charge are among the texts. */
export interface StepFacts {
  /** Usual days in a rotary barrel; at coarse, days from one check and charge to the next. */
  readonly rotaryDays: readonly [from: number, to: number];
  /** Usual days in a vibratory bowl; null where the step is ground in a barrel. */
  readonly vibratoryDays: number | null;
  /** Roughest surface that counts as done: GGX roughness. Our default. */
  readonly roughestAlpha: number;
  /** Smoother than this the step cannot have made it, so it is wet; null where it can. Our default. */
  readonly wetBelowAlpha: number | null;
}

/**
 * Days: common practice, as are the grits and charges that the texts name.
 * Roughness has no published source: our defaults, set so that ranges of neighboring steps overlap.
 */
export const STEP_FACTS: Readonly<Record<Step, StepFacts>> = {
  coarse: {
    rotaryDays: [7, 10],
    vibratoryDays: null,
    roughestAlpha: 1,
    wetBelowAlpha: 0.12,
  },
  medium: {
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    roughestAlpha: 0.5,
    wetBelowAlpha: 0.06,
  },
  fine: {
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    roughestAlpha: 0.25,
    wetBelowAlpha: 0.025,
  },
  prepolish: {
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    roughestAlpha: 0.12,
    wetBelowAlpha: null,
  },
  polish: {
    rotaryDays: [6, 8],
    vibratoryDays: 2,
    roughestAlpha: 0.03,
    wetBelowAlpha: null,
  },
};
