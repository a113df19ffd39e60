import type { FlawReport, PixelPoint, Rig, StoneReport } from '../analysis/report';
import type { StepLimits } from '../grading/limits';
import type { MaterialName } from '../grading/materials';
import type { MeasuredBound, RoughnessAtIndex } from '../grading/measuredStone';
import type { Action } from '../grading/opinion';
import type { Step } from '../grading/steps';

/**
 * Sortable and unique without asking anyone: 48 bits of milliseconds and 80 random bits, 26 letters.
 *
 * @see The ULID specification, github.com/ulid/spec.
 */
export type RecordId = string;

/** A day of the calendar where the bench stands, YYYY-MM-DD (ISO 8601). */
export type Day = string;

/** What all records have. A record is never changed: a correction is a new record that names the first one. */
interface Kept {
  readonly id: RecordId;
  /** The first record of the thing that this one says anew; left out in that first record itself. */
  readonly corrects?: RecordId;
}

export interface MachineRecord extends Kept {
  readonly kind: 'machine';
  readonly name: string;
  readonly type: 'rotary' | 'vibratory';
  /** Rated load of the barrel or bowl. */
  readonly capacityKg: number | null;
}

export interface BatchRecord extends Kept {
  readonly kind: 'batch';
  readonly name: string;
  readonly machine: RecordId | null;
  readonly startedOn: Day;
  /** What its stones are, as far as the owner said. */
  readonly materials: readonly MaterialName[];
  /** Where the rough came from, in the owner's words. */
  readonly source: string;
  /** True when it is finished or given up. */
  readonly isOver: boolean;
}

/** One turn of a batch in a machine: from charge to wash-out. */
export interface RunRecord extends Kept {
  readonly kind: 'run';
  readonly batch: RecordId;
  readonly machine: RecordId | null;
  readonly step: Step;
  readonly startedOn: Day;
  readonly endedOn: Day | null;
  /** What went in, in the owner's words: "1 tablespoon, with 1 tablespoon of borax". */
  readonly charge: string;
}

export interface StoneRecord extends Kept {
  readonly kind: 'stone';
  readonly batch: RecordId;
  /** The owner's name for it: "3", "the green one". */
  readonly name: string;
  readonly material: MaterialName | null;
  /** Where it came from, in the owner's words. */
  readonly source: string;
  readonly isFavorite: boolean;
}

/** A stone as a photo measured and judged it. */
export interface CheckedStone {
  /** Its number in the photo. */
  readonly place: number;
  readonly outline: readonly PixelPoint[];
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly areaMm2: number;
  readonly cutOff: boolean;
  readonly inspectedCm2: number;
  readonly flaws: readonly Pick<
    FlawReport,
    'kind' | 'row' | 'column' | 'diameterMm' | 'lengthMm' | 'widthMm' | 'confidence'
  >[];
  /** Roughness at one refractive index or more, so that gloss can be read anew for another material; null without. */
  readonly highlight: { readonly byIndex: readonly RoughnessAtIndex[] } | null;
  readonly glossBound: MeasuredBound | null;
  readonly glossWithheld?: NonNullable<StoneReport['glossWithheld']>;
  readonly unlike?: NonNullable<StoneReport['unlike']>;
  /** As it was read that day, for the check's material. Null where the photo carried no number. */
  readonly gloss: {
    readonly alpha: number;
    readonly alphaLow: number;
    readonly alphaHigh: number;
    readonly gu60: number;
    readonly gu60Low: number;
    readonly gu60High: number;
  } | null;
  readonly smoothness: number;
  readonly action: Action;
  readonly reasons: readonly string[];
  /** To know it again; null in records of the first version, which kept none. */
  readonly look: StoneReport['look'] | null;
}

/** One photo of a batch, measured and judged; several photos on one day, the stones turned over, are one check. */
export interface CheckRecord extends Kept {
  readonly kind: 'check';
  readonly batch: RecordId;
  /** The check whose stones this photo shows from another side; null in a check's first photo. */
  readonly faceOf: RecordId | null;
  /** Step that the stones come out of. */
  readonly step: Step;
  /** Material that all of the tray was taken for; null for a mixed tray. */
  readonly material: MaterialName | null;
  /** The limits it was judged by. */
  readonly limits: StepLimits;
  readonly day: Day;
  readonly mmPerPx: number;
  /** Length of the measured photo's longer side, whose pixels outlines and places are in; null in the first version's. */
  readonly longestPx: number | null;
  /** Key of the photo among the journal's photos; null when it was not kept. */
  readonly photo: string | null;
  readonly stones: readonly CheckedStone[];
}

/** Which stones the places of a check's photo are; the newest for a photo counts. */
export interface IdentityRecord extends Kept {
  readonly kind: 'identity';
  readonly batch: RecordId;
  readonly check: RecordId;
  readonly stones: readonly {
    readonly place: number;
    readonly stone: RecordId;
    /** How sure the match was, 0 to 1; null when the owner said so. */
    readonly confidence: number | null;
  }[];
}

/** What the owner did with a stone, beside what was advised; the newest for a stone and check counts. */
export interface DecisionRecord extends Kept {
  readonly kind: 'decision';
  readonly batch: RecordId;
  /** First photo of the check. */
  readonly check: RecordId;
  readonly stone: RecordId;
  readonly action: Action;
}

/** Takes a batch, run, stone or check's photo out of all lists, or back in; the newest for a thing counts. */
export interface WithdrawalRecord extends Kept {
  readonly kind: 'withdrawal';
  readonly batch: RecordId;
  /** First record of the thing. */
  readonly of: RecordId;
  readonly isWithdrawn: boolean;
}

export interface RigRecord extends Kept {
  readonly kind: 'rig';
  readonly name: string;
  readonly rig: Rig;
}

export type JournalRecord =
  | MachineRecord
  | BatchRecord
  | RunRecord
  | StoneRecord
  | CheckRecord
  | IdentityRecord
  | DecisionRecord
  | WithdrawalRecord
  | RigRecord;

export type RecordKind = JournalRecord['kind'];
