import type { Finish } from '../grading/finish';
import type { MaterialName } from '../grading/materials';
import type { Action } from '../grading/opinion';
import type { Step } from '../grading/steps';
import type { Day, RecordId } from '../journal/records';
import { adviceAt } from './adviceAt';
import {
  type BatchHistory,
  type BatchRecords,
  batchHistory,
  type StoneCheck,
  type StoneHistory,
} from './batchHistory';
import { checkGrade } from './checkGrade';
import { countedActions } from './countedActions';
import { daysBetween } from './daysBetween';

/** What is compared of a stone, without its checks. */
export interface StoneDigest {
  readonly stone: RecordId;
  readonly batch: RecordId;
  readonly name: string;
  readonly material: MaterialName | null;
  readonly source: string;
  readonly isFavorite: boolean;
  readonly checkCount: number;
  readonly firstDay: Day;
  readonly lastDay: Day;
  /** Days from the batch's start to the stone's last check in coarse; null when it was never seen there. */
  readonly coarseDays: number | null;
  /** At the first and at the last check. */
  readonly lengthMm: readonly [first: number, last: number];
  readonly areaMm2: readonly [first: number, last: number];
  /** Last reading after polish; null before. */
  readonly gloss: GlossDigest | null;
  /** Steps it was seen to come out of, in order, each once. */
  readonly steps: readonly Step[];
  /** Step of the last check: a stone may have gone back. */
  readonly lastStep: Step;
  /** What was done with it last, or advised when nothing was said. */
  readonly action: Action;
}

export interface GlossDigest {
  readonly gu60: number;
  readonly gu60Low: number;
  readonly gu60High: number;
  readonly ceilingGu60: number;
  readonly shareOfCeiling: number;
  readonly finish: Finish;
}

/** A batch as lists and comparisons need it. Worked out from its records and kept beside them, so it may be dropped and made anew. */
export interface BatchDigest {
  readonly batch: RecordId;
  readonly name: string;
  readonly machine: RecordId | null;
  readonly startedOn: Day;
  readonly isOver: boolean;
  readonly checkCount: number;
  readonly last: {
    readonly check: RecordId;
    readonly day: Day;
    readonly step: Step;
    readonly photo: string | null;
    /** Stones of the first photo by what was advised. */
    readonly actions: Readonly<Partial<Record<Action, number>>>;
  } | null;
  readonly stones: readonly StoneDigest[];
}

/** Sums up a batch. */
export function batchDigest(records: BatchRecords): BatchDigest {
  const history = batchHistory(records);
  const { batch, checks } = history;
  const last = checks.at(-1)?.check ?? null;
  return {
    batch: batch.id,
    name: batch.name,
    machine: batch.machine,
    startedOn: batch.startedOn,
    isOver: batch.isOver,
    checkCount: checks.length,
    last: last && {
      check: last.id,
      day: last.day,
      step: last.step,
      photo: last.photo,
      actions: countedActions(last),
    },
    stones: history.stones.flatMap((stone) => stoneDigest(history, stone)),
  };
}

function stoneDigest({ batch }: BatchHistory, { stone, checks }: StoneHistory): StoneDigest[] {
  const [first, last] = [checks[0], checks.at(-1)];
  if (!first || !last) return [];
  const coarse = checks.findLast(({ check }) => check.step === 'coarse');
  const polished = checks.findLast(({ check }) => check.step === 'polish');
  const gloss = polished ? checkGrade(polished, stone.material).gloss : null;
  return [
    {
      stone: stone.id,
      batch: batch.id,
      name: stone.name,
      material: stone.material ?? last.check.material,
      source: stone.source,
      isFavorite: stone.isFavorite,
      checkCount: checks.length,
      firstDay: first.check.day,
      lastDay: last.check.day,
      coarseDays: coarse ? Math.max(0, daysBetween(batch.startedOn, coarse.check.day)) : null,
      lengthMm: [largest(first, 'lengthMm'), largest(last, 'lengthMm')],
      areaMm2: [largest(first, 'areaMm2'), largest(last, 'areaMm2')],
      gloss: gloss && {
        gu60: gloss.gu60,
        gu60Low: gloss.gu60Low,
        gu60High: gloss.gu60High,
        ceilingGu60: gloss.ceilingGu60,
        shareOfCeiling: gloss.shareOfCeiling,
        finish: gloss.finish,
      },
      steps: [...new Set(checks.map(({ check }) => check.step))],
      lastStep: last.check.step,
      action: last.decision ?? adviceAt(last),
    },
  ];
}

const largest = ({ faces }: StoneCheck, figure: 'lengthMm' | 'areaMm2') =>
  Math.max(...faces.map(({ stone }) => stone[figure]));
