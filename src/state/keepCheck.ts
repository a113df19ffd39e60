import { DEFAULT_LIMITS, type Limits } from '../grading/limits';
import type { MaterialName } from '../grading/materials';
import type { Step } from '../grading/steps';
import { currentRecords } from '../history/currentRecords';
import { withdrawnIds } from '../history/withdrawnIds';
import { checkRecord } from '../journal/checkRecord';
import type { Journal, KeptPhoto } from '../journal/openJournal';
import { recordId } from '../journal/recordId';
import type {
  BatchRecord,
  CheckRecord,
  Day,
  IdentityRecord,
  RecordId,
  StoneRecord,
} from '../journal/records';
import { partOf, type Watch } from '../progress/watch';
import type { GradedPhoto } from './gradePhoto';

/** A stone of the photo, as it was matched or as the owner said. */
export interface NamedPlace {
  readonly place: number;
  /** Null for a stone that is new to the batch. */
  readonly stone: RecordId | null;
  /** Of the match, 0 to 1; null when the owner said so. */
  readonly confidence: number | null;
}

export interface CheckToKeep {
  readonly file: Blob;
  readonly graded: GradedPhoto;
  readonly step: Step;
  readonly material: MaterialName | null;
  readonly limits: Limits | null;
  readonly day: Day;
  /** An existing batch, or the name of a new one. */
  readonly batch: { readonly id: RecordId } | { readonly name: string };
  /** The check that the photo shows from another side; null for a check of its own. */
  readonly faceOf: RecordId | null;
  readonly stones: readonly NamedPlace[];
}

/** Where a check went. */
export interface KeptAs {
  readonly batch: RecordId;
  /** The photo's own record. */
  readonly photo: RecordId;
  /** The check's first photo; the same for a check of one photo. */
  readonly check: RecordId;
  /** All that was new with it: its photo, stones and, of a first check, its batch. */
  readonly fresh: readonly RecordId[];
}

/** Share of the time after which the photo is ready to be kept. */
const SHRUNK = 0.8;

/**
 * Adds a check with its photo, its stones and, for a first check, its batch; all of it or nothing.
 *
 * @throws The reason for which it was called off.
 */
export async function keepCheck(
  journal: Journal,
  toKeep: CheckToKeep,
  shrink: (file: Blob, watch: Watch) => Promise<KeptPhoto>,
  watch: Watch = {},
): Promise<KeptAs> {
  const { graded, step, material, day, faceOf } = toKeep;
  const photo = await shrink(toKeep.file, partOf(watch, 0, SHRUNK));
  const batch = batchOf(toKeep);
  const id = recordId();
  const limits = (toKeep.limits ?? DEFAULT_LIMITS)[step];
  const setting = { id, batch: batch.id, faceOf, step, material, limits, day, photo: photo.key };
  const check = checkRecord(setting, graded.report, graded.grades);
  const known = await knownOf(journal, batch.id);
  const { fresh, identity } = named(toKeep.stones, { batch: batch.id, check: id, material, ...known });
  await journal.add([...batch.fresh, check, ...fresh, identity], [photo], partOf(watch, SHRUNK, 1));
  const added = [...batch.fresh, check, ...fresh].map(({ id: one }) => one);
  return { batch: batch.id, photo: id, check: faceOf ?? id, fresh: added };
}

function batchOf({ batch, day }: CheckToKeep): { id: RecordId; fresh: BatchRecord[] } {
  if ('id' in batch) return { id: batch.id, fresh: [] };
  const id = recordId();
  return {
    id,
    fresh: [
      {
        kind: 'batch',
        id,
        name: batch.name,
        machine: null,
        startedOn: day,
        materials: [],
        source: '',
        isOver: false,
      },
    ],
  };
}

interface Place {
  readonly batch: RecordId;
  readonly check: RecordId;
  readonly material: MaterialName | null;
  readonly knownCount: number;
  /** What the batch's rough is, where it is of one material. */
  readonly oneMaterial: MaterialName | null;
  readonly source: string;
}

/** Says anew which stones lie in a kept photo. */
export async function nameStones(
  journal: Journal,
  { batch, id: check, material }: CheckRecord,
  stones: readonly NamedPlace[],
): Promise<void> {
  const known = await knownOf(journal, batch);
  const { fresh, identity } = named(stones, { batch, check, material, ...known });
  await journal.add([...fresh, identity]);
}

/** New stones are numbered on from those there, and are what the batch was said to be of. */
async function knownOf(
  journal: Journal,
  batch: RecordId,
): Promise<Pick<Place, 'knownCount' | 'oneMaterial' | 'source'>> {
  const records = await journal.batch(batch);
  const withdrawn = withdrawnIds(records?.withdrawals ?? []);
  const materials = records?.batch.materials ?? [];
  return {
    knownCount: currentRecords(records?.stones ?? []).filter(({ id }) => !withdrawn.has(id)).length,
    oneMaterial: materials.length === 1 ? (materials[0] ?? null) : null,
    source: records?.batch.source ?? '',
  };
}

/** What is said of the stones, and the stones that are new by it. */
function named(
  places: readonly NamedPlace[],
  { batch, check, material, knownCount, oneMaterial, source }: Place,
): { fresh: StoneRecord[]; identity: IdentityRecord } {
  const fresh: StoneRecord[] = [];
  const stones = places.map(({ place, stone, confidence }) => {
    if (stone !== null) return { place, stone, confidence };
    const name = `${knownCount + fresh.length + 1}`;
    const added: StoneRecord = {
      kind: 'stone',
      id: recordId(),
      batch,
      name,
      material: material ?? oneMaterial,
      source,
      isFavorite: false,
    };
    fresh.push(added);
    return { place, stone: added.id, confidence: null };
  });
  return { fresh, identity: { kind: 'identity', id: recordId(), batch, check, stones } };
}
