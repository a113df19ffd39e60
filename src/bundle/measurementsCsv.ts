import { type FlawTally, flawTally } from '../grading/flawTally';
import type { Action } from '../grading/opinion';
import {
  type BatchCheck,
  type BatchHistory,
  type Face,
  placeKey,
  type StoneHistory,
} from '../history/batchHistory';
import { joinFaces } from '../history/joinFaces';
import type { RecordId } from '../journal/records';
import { type Cell, csvRows, csvText } from './csvText';

/** What a row is about. */
interface Row extends Face {
  readonly history: BatchHistory;
  readonly check: BatchCheck;
  /** 1 for the check's first photo. */
  readonly side: number;
  /** Null while nobody has said which stone it is. */
  readonly known: StoneHistory | null;
  readonly decision: Action | null;
  readonly flaws: FlawTally;
  readonly surfaceCm2: number;
}

type Column = readonly [name: string, cell: (row: Row) => Cell];

/** Names are never changed; new columns are added at the end. Cells without `rounded` or a count hold text. */
const COLUMNS: readonly Column[] = [
  ['batch', ({ history }) => history.batch.name],
  ['day', ({ check }) => check.check.day],
  ['step', ({ check }) => check.check.step],
  ['side', ({ side }) => side],
  ['place', ({ stone }) => stone.place],
  ['stone', ({ known }) => known?.stone.name ?? null],
  ['material', ({ known, photo }) => known?.stone.material ?? photo.material],
  ['source', ({ known }) => known?.stone.source ?? null],
  ['favorite', ({ known }) => known?.stone.isFavorite ?? null],
  ['length mm', ({ stone }) => rounded(stone.lengthMm)],
  ['width mm', ({ stone }) => rounded(stone.widthMm)],
  ['area mm2', ({ stone }) => rounded(stone.areaMm2)],
  ['cut off', ({ stone }) => stone.cutOff],
  ['inspected cm2', ({ stone }) => rounded(stone.inspectedCm2)],
  ['pits', ({ flaws }) => flaws.pit.count],
  ['pits per cm2', ({ flaws, surfaceCm2 }) => rounded(flaws.pit.count / surfaceCm2)],
  ['widest pit mm', ({ flaws }) => rounded(flaws.pit.largestMm)],
  ['fractures', ({ flaws }) => flaws.fracture.count],
  ['fractures mm', ({ flaws }) => rounded(flaws.fracture.totalMm)],
  ['chips', ({ flaws }) => flaws.chip.count],
  ['scratches', ({ flaws }) => flaws.scratch.count],
  ['smoothness', ({ stone }) => rounded(stone.smoothness, 1)],
  ['gloss GU60', ({ stone }) => rounded(stone.gloss?.gu60, 1)],
  ['gloss GU60 low', ({ stone }) => rounded(stone.gloss?.gu60Low, 1)],
  ['gloss GU60 high', ({ stone }) => rounded(stone.gloss?.gu60High, 1)],
  ['alpha', ({ stone }) => rounded(stone.gloss?.alpha, 5)],
  ['alpha low', ({ stone }) => rounded(stone.gloss?.alphaLow, 5)],
  ['alpha high', ({ stone }) => rounded(stone.gloss?.alphaHigh, 5)],
  ['advice', ({ stone }) => stone.action],
  ['reasons', ({ stone }) => stone.reasons.join(' ')],
  ['decision', ({ decision }) => decision],
  ['mm per pixel', ({ photo }) => rounded(photo.mmPerPx, 6)],
  ['batch id', ({ history }) => history.batch.id],
  ['check id', ({ check }) => check.check.id],
  ['photo id', ({ photo }) => photo.id],
  ['stone id', ({ known }) => known?.stone.id ?? null],
];

/**
 * All measurements of batches as CSV: one row for each stone of each photo of each check, the oldest first.
 *
 * Flaws are those that counted that day, by the check's own limit of confidence; gloss, smoothness and advice are as
 * they were read that day from this photo alone, reasons in the language spoken that day. The interval of gloss is that
 * of 90 %.
 *
 * @see `csvText` for how cells are written.
 */
export function measurementsCsv(histories: readonly BatchHistory[]): string {
  return [measurementsHead(), ...histories.map(measurementRows)].join('');
}

/** The row of names that `measurementsCsv` begins with. */
export const measurementsHead = (): string => csvText([COLUMNS.map(([name]) => name)]);

/** The rows of one batch, as `measurementsCsv` has them below its head. */
export const measurementRows = (history: BatchHistory): string =>
  csvRows(rowsOf(history).map((row) => COLUMNS.map(([, cell]) => cell(row))));

function rowsOf(history: BatchHistory): Row[] {
  const byId = new Map(history.stones.map((one) => [one.stone.id, one]));
  return history.checks.flatMap((check) =>
    check.photos.flatMap((photo, i) =>
      photo.stones.map((stone): Row => {
        const known = byId.get(check.stoneAt.get(placeKey(photo.id, stone.place)) ?? '') ?? null;
        const { sure: flaws, surfaceCm2 } = flawTally(joinFaces([stone]), check.check.limits);
        const decision = known && decisionAt(known, check.check.id);
        return { history, check, side: i + 1, photo, stone, known, decision, flaws, surfaceCm2 };
      }),
    ),
  );
}

const decisionAt = ({ checks }: StoneHistory, check: RecordId): Action | null =>
  checks.find((one) => one.check.id === check)?.decision ?? null;

/** Null also for a share of nothing, which no table knows. */
function rounded(value: number | undefined, decimals = 3): number | null {
  return value === undefined || !Number.isFinite(value) ? null : Number(value.toFixed(decimals));
}
