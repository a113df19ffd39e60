import type { PhotoReport } from '../analysis/report';
import type { StoneGrade } from '../grading/gradeStone';
import { DEFAULT_LIMITS } from '../grading/limits';
import type { MaterialName } from '../grading/materials';
import type { Step } from '../grading/steps';
import { type BatchRecords, batchHistory } from '../history/batchHistory';
import { proposeStones, TAKEN_FROM } from '../history/proposeStones';
import { checkRecord } from '../journal/checkRecord';
import { recordId } from '../journal/recordId';
import type { CheckRecord, Day, IdentityRecord, StoneRecord } from '../journal/records';

/** A photo that was measured and graded, and is kept. */
export interface PhotoToKeep {
  readonly report: PhotoReport;
  readonly grades: readonly StoneGrade[];
  readonly day: Day;
  readonly step: Step;
  readonly material: MaterialName | null;
  /** Key under which it is kept. */
  readonly photo: string;
}

/**
 * A batch out of photos: each is a check of its own.
 *
 * The stones of the first photo are the batch's. Those of later ones are known again where the match is sure enough to
 * be taken without asking; the others are left unnamed, since a command cannot ask: an invented second stone, or a
 * wrong one, would spoil the histories of both, while a place without a name is named in the page at any time.
 *
 * @param photos - The oldest first; at least one.
 * @param takenFrom - Confidence from which a match is sure enough.
 */
export function batchFromPhotos(
  photos: readonly PhotoToKeep[],
  name: string,
  takenFrom = TAKEN_FROM,
): BatchRecords {
  const id = recordId();
  const startedOn = photos[0]!.day;
  let batch: BatchRecords = {
    batch: { kind: 'batch', id, name, machine: null, startedOn, materials: [], source: '', isOver: false },
    ...{ runs: [], stones: [], checks: [], identities: [], decisions: [], withdrawals: [] },
  };
  for (const { report, grades, day, photo, step, material } of photos) {
    const about = { id: recordId(), batch: id, faceOf: null, step, material, limits: DEFAULT_LIMITS[step] };
    const check = checkRecord({ ...about, day, photo }, report, grades);
    const stones = batch.stones.length === 0 ? newStones(check) : [];
    const identity = { kind: 'identity', id: recordId(), batch: id, check: check.id } as const;
    const named = batch.stones.length === 0 ? allNew(check, stones) : knownAgain(report, batch, takenFrom);
    batch = {
      ...batch,
      stones: [...batch.stones, ...stones],
      checks: [...batch.checks, check],
      identities: [...batch.identities, { ...identity, stones: named }],
    };
  }
  return batch;
}

function newStones({ batch, material, stones }: CheckRecord): StoneRecord[] {
  return stones.map(({ place }) => {
    const said = { name: `${place}`, material, source: '', isFavorite: false };
    return { kind: 'stone', id: recordId(), batch, ...said };
  });
}

const allNew = ({ stones }: CheckRecord, fresh: readonly StoneRecord[]): IdentityRecord['stones'] =>
  stones.map(({ place }, i) => ({ place, stone: fresh[i]!.id, confidence: null }));

function knownAgain(
  { stones }: PhotoReport,
  batch: BatchRecords,
  takenFrom: number,
): IdentityRecord['stones'] {
  const seen = stones.map(({ id, look }) => ({ place: id, look }));
  return proposeStones(seen, batchHistory(batch)).flatMap(({ place, stone, confidence }) =>
    stone === null || confidence < takenFrom ? [] : [{ place, stone, confidence }],
  );
}
