import type { FlawReport, PixelPoint, Rig } from '../analysis/report';
import type { MaterialName } from '../grading/materials';
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
  readonly name: string;
  readonly material: MaterialName | null;
  /** Where it came from, in the owner's words. */
  readonly source: string;
  readonly isFavorite: boolean;
}

/** A stone as a check measured and judged it. */
export interface CheckedStone {
  /** Its number in the photo. */
  readonly place: number;
  readonly outline: readonly PixelPoint[];
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly areaMm2: number;
  readonly inspectedCm2: number;
  readonly flaws: readonly Pick<
    FlawReport,
    'kind' | 'row' | 'column' | 'diameterMm' | 'lengthMm' | 'widthMm' | 'confidence'
  >[];
  /** Null where the photo carried no number. */
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
}

export interface CheckRecord extends Kept {
  readonly kind: 'check';
  readonly batch: RecordId;
  readonly step: Step;
  readonly day: Day;
  readonly mmPerPx: number;
  /** Key of the photo among the journal's photos; null when it was not kept. */
  readonly photo: string | null;
  readonly stones: readonly CheckedStone[];
}

/** Which stone a place of a check is. */
export interface IdentityRecord extends Kept {
  readonly kind: 'identity';
  readonly check: RecordId;
  readonly place: number;
  readonly stone: RecordId;
}

/** What the owner did with a stone, beside what was advised. */
export interface DecisionRecord extends Kept {
  readonly kind: 'decision';
  readonly check: RecordId;
  readonly place: number;
  readonly action: Action;
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
  | RigRecord;

export type RecordKind = JournalRecord['kind'];
