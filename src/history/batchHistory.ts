import type { Action } from '../grading/opinion';
import type {
  BatchRecord,
  CheckedStone,
  CheckRecord,
  DecisionRecord,
  IdentityRecord,
  RecordId,
  RunRecord,
  StoneRecord,
  WithdrawalRecord,
} from '../journal/records';
import { currentRecords } from './currentRecords';
import { withdrawnIds } from './withdrawnIds';

/** All records of one batch, corrections included, in any order. */
export interface BatchRecords {
  readonly batch: BatchRecord;
  readonly runs: readonly RunRecord[];
  readonly stones: readonly StoneRecord[];
  readonly checks: readonly CheckRecord[];
  readonly identities: readonly IdentityRecord[];
  readonly decisions: readonly DecisionRecord[];
  readonly withdrawals: readonly WithdrawalRecord[];
}

/** A stone as one photo of a check shows it. */
export interface Face {
  readonly photo: CheckRecord;
  readonly stone: CheckedStone;
}

/** A stone at one check, from all sides that were photographed. */
export interface StoneCheck {
  /** The check's first photo, which tells day, step and limits. */
  readonly check: CheckRecord;
  /** At least one. */
  readonly faces: readonly [Face, ...Face[]];
  /** What the owner did; null when nothing was said. */
  readonly decision: Action | null;
}

export interface StoneHistory {
  readonly stone: StoneRecord;
  /** The oldest first. */
  readonly checks: readonly StoneCheck[];
}

/** One check of a batch: its first photo and those of further sides. */
export interface BatchCheck {
  readonly check: CheckRecord;
  readonly photos: readonly CheckRecord[];
  /** The stones known in it, by photo and place: `${photo}/${place}`. */
  readonly stoneAt: ReadonlyMap<string, RecordId>;
}

export interface BatchHistory {
  readonly batch: BatchRecord;
  readonly runs: readonly RunRecord[];
  /** The oldest first. */
  readonly checks: readonly BatchCheck[];
  /** In the order they were first seen. */
  readonly stones: readonly StoneHistory[];
}

/** Key of a place in `BatchCheck.stoneAt`. */
export const placeKey = (photo: RecordId, place: number) => `${photo}/${place}`;

/** Puts the records of a batch together, but for those withdrawn: each check with its photos, each stone with its checks. */
export function batchHistory(records: BatchRecords): BatchHistory {
  const withdrawn = withdrawnIds(records.withdrawals);
  const present = <T extends { readonly id: RecordId }>(things: readonly T[]) =>
    things.filter(({ id }) => !withdrawn.has(id));
  const photos = present(currentRecords(records.checks));
  const identities = newestBy(currentRecords(records.identities), ({ check }) => check);
  const decisions = newestBy(currentRecords(records.decisions), ({ check, stone }) => placeOf(check, stone));
  const firstOf = firstPhotos(photos);
  const isFirst = (photo: CheckRecord) => firstOf.get(photo) === photo;
  const checks = photos.filter(isFirst).map((check): BatchCheck => {
    const own = photos.filter((photo) => firstOf.get(photo) === check);
    const named = own.flatMap((photo) =>
      (identities.get(photo.id)?.stones ?? []).map(
        ({ place, stone }) => [placeKey(photo.id, place), stone] as const,
      ),
    );
    return { check, photos: own, stoneAt: new Map(named) };
  });
  checks.sort((a, b) =>
    a.check.day === b.check.day ? order(a.check.id, b.check.id) : order(a.check.day, b.check.day),
  );
  const stones = present(currentRecords(records.stones)).map((stone) => ({
    stone,
    checks: checks.flatMap((one) => stoneCheck(one, stone.id, decisions)),
  }));
  return { batch: records.batch, runs: present(currentRecords(records.runs)), checks, stones };
}

/**
 * The first photo of the check that each photo belongs to. A side whose first photo is missing, as when only one of two
 * devices' journals is here, stands for itself; a side of a side belongs to the first photo of both, and of photos that
 * are each a side of the next, as no device says, the oldest is the first: no photo is lost.
 */
function firstPhotos(photos: readonly CheckRecord[]): Map<CheckRecord, CheckRecord> {
  const byId = new Map(photos.map((photo) => [photo.id, photo]));
  const firstOf = new Map<CheckRecord, CheckRecord>();
  for (const photo of photos) {
    const way = new Set<CheckRecord>();
    let at = photo;
    while (!way.has(at) && !firstOf.has(at)) {
      way.add(at);
      at = byId.get(at.faceOf ?? '') ?? at;
    }
    const circle = [...way].slice([...way].indexOf(at));
    const first = firstOf.get(at) ?? circle.reduce((a, b) => (a.id < b.id ? a : b));
    for (const one of way) firstOf.set(one, first);
  }
  return firstOf;
}

function stoneCheck(
  { check, photos, stoneAt }: BatchCheck,
  stone: RecordId,
  decisions: ReadonlyMap<string, DecisionRecord>,
): StoneCheck[] {
  const faces = photos.flatMap((photo) =>
    photo.stones
      .filter(({ place }) => stoneAt.get(placeKey(photo.id, place)) === stone)
      .map((seen): Face => ({ photo, stone: seen })),
  );
  const [first, ...others] = faces;
  if (!first) return [];
  return [
    { check, faces: [first, ...others], decision: decisions.get(placeOf(check.id, stone))?.action ?? null },
  ];
}

const placeOf = (check: RecordId, stone: RecordId) => `${check}/${stone}`;
const order = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** The last of each: records come in the order of their ids. */
function newestBy<T>(records: readonly T[], key: (record: T) => string): Map<string, T> {
  return new Map(records.map((record) => [key(record), record]));
}
