import { gradeStone } from '../../src/grading/gradeStone';
import { DEFAULT_LIMITS, type Limits } from '../../src/grading/limits';
import type { MaterialName } from '../../src/grading/materials';
import type { MeasuredFlaw } from '../../src/grading/measuredStone';
import type { Step } from '../../src/grading/steps';
import type { BatchRecords } from '../../src/history/batchHistory';
import { dayAfter } from '../../src/history/daysBetween';
import type {
  CheckedStone,
  CheckRecord,
  IdentityRecord,
  JournalRecord,
  StoneRecord,
} from '../../src/journal/records';
import { inventedReport } from './inventedReport';

/** What a check sees of a stone; what is left out is a sound stone of 30 mm without a gloss reading. */
export interface SeenSo {
  readonly pits?: number;
  readonly fractureMm?: number;
  readonly lengthMm?: number;
  /** Roughness, the same at every refractive index. */
  readonly alpha?: number;
}

export interface CheckSo {
  readonly step: Step;
  /** Days after the batch's start, March 2, 2026. */
  readonly day: number;
  /** Stone 1, stone 2 … of the batch. */
  readonly stones: readonly SeenSo[];
  /** Index of the check whose stones this photo shows from another side. */
  readonly faceOf?: number;
}

/** Surface that every invented stone was inspected on. */
export const INVENTED_CM2 = 5;
const STARTED_ON = '2026-03-02';
const MM_PER_PX = 0.1;

/** Checks in coarse, a week apart. */
export const weeksInCoarse = (checks: readonly (readonly SeenSo[])[]): CheckSo[] =>
  checks.map((stones, i) => ({ step: 'coarse', day: 7 * (i + 1), stones }));

/**
 * A batch that never was. Stones look as those of `inventedReport` with the same number.
 *
 * @param about - Material of all its stones, and the letter that tells its ids from another batch's.
 */
export function inventedBatch(
  checks: readonly CheckSo[],
  { material = null, letter = 'B' }: { material?: MaterialName | null; letter?: string } = {},
): BatchRecords {
  const id = (kind: number, number: number) => `01${letter}${kind}${String(number).padStart(4, '0')}`;
  const batch = id(0, 0);
  const count = Math.max(0, ...checks.map(({ stones }) => stones.length));
  const stones = Array.from(
    { length: count },
    (_, i): StoneRecord => ({
      ...{ kind: 'stone', id: id(1, i), batch, name: `${i + 1}`, material },
      ...{ source: 'the brook', isFavorite: false },
    }),
  );
  const photos = checks.map(({ step, day, stones: seen, faceOf }, i): CheckRecord => {
    const about = { step, material, limits: DEFAULT_LIMITS[step], day: dayAfter(STARTED_ON, day) };
    return {
      ...{
        kind: 'check',
        id: id(2, i),
        batch,
        faceOf: faceOf === undefined ? null : id(2, faceOf),
        ...about,
      },
      ...{
        mmPerPx: MM_PER_PX,
        longestPx: 1800,
        photo: null,
        stones: seen.map((one, k) => checked(one, k + 1, step, material)),
      },
    };
  });
  const identities = photos.map(
    (photo, i): IdentityRecord => ({
      ...{ kind: 'identity', id: id(3, i), batch, check: photo.id },
      stones: photo.stones.map(({ place }) => ({ place, stone: stones[place - 1]!.id, confidence: 0.99 })),
    }),
  );
  return {
    batch: {
      kind: 'batch',
      id: batch,
      name: 'Brook pebbles',
      machine: null,
      startedOn: STARTED_ON,
      materials: [],
      source: '',
      isOver: false,
    },
    ...{ runs: [], stones, checks: photos, identities, decisions: [], withdrawals: [] },
  };
}

/** All records of a batch, as a journal has them. */
export const recordsOf = ({
  batch,
  runs,
  stones,
  checks,
  identities,
  decisions,
  withdrawals,
}: BatchRecords): JournalRecord[] => [
  ...[batch, ...runs, ...stones, ...checks, ...identities, ...decisions, ...withdrawals],
];

function checked(seen: SeenSo, place: number, step: Step, material: MaterialName | null): CheckedStone {
  const { lengthMm = 30, alpha } = seen;
  const { outline, look } = inventedReport(place).stones[place - 1]!;
  const flaws = flawsOf(seen).map((flaw) => ({ ...flaw, row: 100, column: 100 }));
  const indices = [1.45, 1.54, 1.65];
  const measured = {
    ...{ lengthMm, widthMm: 0.8 * lengthMm, areaMm2: (Math.PI / 4) * 0.8 * lengthMm ** 2, cutOff: false },
    ...{ inspectedCm2: INVENTED_CM2, flaws },
    highlight:
      alpha === undefined
        ? null
        : { byIndex: indices.map((n) => ({ n, alpha, alphaLow: 0.9 * alpha, alphaHigh: 1.1 * alpha })) },
    glossBound: alpha === undefined ? { byIndex: indices.map((n) => ({ n, alphaAtLeast: 0.3 })) } : null,
  };
  const settings = { step, material, limits: DEFAULT_LIMITS as Limits, mmPerPx: MM_PER_PX };
  const { gloss, smoothness, verdict } = gradeStone({ id: place, ...measured }, settings);
  const { action, reasons } = verdict;
  return { place, outline, ...measured, gloss: gloss && readGloss(gloss), smoothness, action, reasons, look };
}

function flawsOf({ pits = 0, fractureMm = 0 }: SeenSo): MeasuredFlaw[] {
  const pit: MeasuredFlaw = { kind: 'pit', diameterMm: 0.6, confidence: 0.9 };
  const fractures: MeasuredFlaw[] =
    fractureMm > 0 ? [{ kind: 'fracture', lengthMm: fractureMm, confidence: 0.9 }] : [];
  return [...Array.from({ length: pits }, () => pit), ...fractures];
}

function readGloss({
  alpha,
  alphaLow,
  alphaHigh,
  gu60,
  gu60Low,
  gu60High,
}: NonNullable<CheckedStone['gloss']>) {
  return { alpha, alphaLow, alphaHigh, gu60, gu60Low, gu60High };
}
