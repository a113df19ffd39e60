import type { Step } from './steps';

/** What is let pass at one step; the owner's to set. */
export interface StepLimits {
  readonly maxPitsPerCm2: number;
  readonly maxPitDiameterMm: number;
  /** Length of all fractures together. */
  readonly maxFractureMm: number;
  /** From this length of fractures on, more grinding is not worth it. */
  readonly setAsideFractureMm: number;
  readonly maxChipMm: number;
  /** Fresh scratches let pass; null where the step itself scratches. */
  readonly maxScratches: number | null;
  /** Flaws seen with less confidence than this are doubtful, those below a quarter of it are left out; 0 to 1. */
  readonly minFlawConfidence: number;
  /** Share of the ceiling at which a stone is finished, 0 to 1; null before polish. */
  readonly minShareOfCeiling: number | null;
  /** Stones shorter than this are not ground any further. */
  readonly minLengthMm: number;
}

export type Limits = Readonly<Record<Step, StepLimits>>;

const LEAVING_COARSE: StepLimits = {
  maxPitsPerCm2: 0.5,
  maxPitDiameterMm: 0.8,
  maxFractureMm: 2,
  setAsideFractureMm: 8,
  maxChipMm: 1.5,
  maxScratches: null,
  minFlawConfidence: 0.5,
  minShareOfCeiling: null,
  minLengthMm: 10,
};

/** Source: our default, to be changed to taste; that pits and fractures must be gone before fine steps is common practice. */
export const DEFAULT_LIMITS: Limits = {
  coarse: LEAVING_COARSE,
  medium: LEAVING_COARSE,
  fine: { ...LEAVING_COARSE, maxScratches: 1 },
  prepolish: { ...LEAVING_COARSE, maxScratches: 1 },
  polish: { ...LEAVING_COARSE, maxScratches: 1, minShareOfCeiling: 0.75 },
};

/** What a limit is counted in and what it rests on. */
export interface LimitNote {
  /** Empty for a plain number. */
  readonly unit: 'mm' | 'per cm²' | '';
  readonly source: string;
}

export const LIMIT_NOTES: Readonly<Record<keyof StepLimits, LimitNote>> = {
  maxPitsPerCm2: { unit: 'per cm²', source: 'our default; density as in ASTM G46' },
  maxPitDiameterMm: { unit: 'mm', source: 'our default; size as in ASTM G46' },
  maxFractureMm: { unit: 'mm', source: 'our default' },
  setAsideFractureMm: {
    unit: 'mm',
    source: 'our default; that long fractures rarely grind out is common practice',
  },
  maxChipMm: { unit: 'mm', source: 'our default' },
  maxScratches: { unit: '', source: 'our default' },
  minFlawConfidence: { unit: '', source: 'our default' },
  minShareOfCeiling: {
    unit: '',
    source: 'our default: on quartz the lower end of gloss',
  },
  minLengthMm: {
    unit: 'mm',
    source: 'our default; that small stones must stop is common practice',
  },
};
