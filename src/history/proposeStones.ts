import { lookDistance } from '../identity/lookDistance';
import { matchLooks } from '../identity/matchLooks';
import type { CheckRecord, RecordId } from '../journal/records';
import { type BatchHistory, placeKey, type StoneHistory } from './batchHistory';

type Look = NonNullable<CheckRecord['stones'][number]['look']>;

/** Which known stone a stone of a new photo may be. */
export interface Proposal {
  /** Its number in the photo. */
  readonly place: number;
  /** Null for a stone that is new to the batch. */
  readonly stone: RecordId | null;
  /** How likely that is right, 0 to 1. */
  readonly confidence: number;
  /** True when the owner should be asked. */
  readonly isUnsure: boolean;
  /** All stones it may be, the likeliest first. */
  readonly candidates: readonly RecordId[];
}

/** From this confidence on a match is taken without asking; `npm run bench:identity` measures how often that is right. */
export const TAKEN_FROM = 0.95;

/**
 * Which of a batch's stones lie in a new photo.
 *
 * @param seen - Place and look of each stone of the photo.
 * @param history - The batch so far; without stones every stone is new, and nothing is asked.
 * @param faceOf - The check that the photo shows from another side: then only its stones are thought of.
 */
export function proposeStones(
  seen: readonly { readonly place: number; readonly look: Look }[],
  history: Pick<BatchHistory, 'checks' | 'stones'>,
  faceOf: RecordId | null = null,
): Proposal[] {
  const known = history.stones
    .filter(({ checks }) => (faceOf === null ? checks.length > 0 : isIn(checks, faceOf)))
    .map((stone) => knownStone(stone, history, faceOf));
  if (known.length === 0) {
    return seen.map(({ place }) => ({ place, stone: null, confidence: 1, isUnsure: false, candidates: [] }));
  }
  const matches = matchLooks(
    seen.map(({ look }) => look),
    known,
  );
  return seen.map(({ place, look }, i) => {
    const match = matches[i]!;
    const byLikeness = known
      .map(({ id, looks }) => ({ id, distance: Math.min(...looks.map((one) => lookDistance(look, one))) }))
      .sort((a, b) => a.distance - b.distance);
    return {
      place,
      stone: match.known === null ? null : known[match.known]!.id,
      confidence: match.confidence,
      isUnsure: match.confidence < TAKEN_FROM,
      candidates: byLikeness.map(({ id }) => id),
    };
  });
}

const isIn = (checks: StoneHistory['checks'], id: RecordId) => checks.some(({ check }) => check.id === id);

function knownStone(
  { stone, checks }: StoneHistory,
  { checks: all }: Pick<BatchHistory, 'checks'>,
  faceOf: RecordId | null,
) {
  const looks = checks.flatMap(({ faces }) => faces.flatMap(({ stone: { look } }) => (look ? [look] : [])));
  const last = all.findIndex(({ check }) => check.id === checks.at(-1)?.check.id);
  // Another side of the same check has lost nothing yet.
  return { id: stone.id, looks, checksAgo: faceOf === null ? Math.max(0, all.length - last) : 0 };
}

/**
 * Asks anew which stones lie in a photo that is kept already.
 *
 * @param history - The batch with that photo.
 * @param photo - The photo; its stones are compared with those of the other photos.
 * @returns One proposal for each place, with the stone that it was named as, and unsure where it was named as none.
 */
export function proposeAnew(
  history: Pick<BatchHistory, 'checks' | 'stones'>,
  photo: CheckRecord,
): Proposal[] {
  const named = new Map(
    history.checks.flatMap(({ stoneAt }) =>
      photo.stones.flatMap(({ place }) => {
        const stone = stoneAt.get(placeKey(photo.id, place));
        return stone === undefined ? [] : [[place, stone] as const];
      }),
    ),
  );
  const others = history.stones.map(({ stone, checks }) => ({
    stone,
    checks: checks.flatMap((seen) => {
      const [first, ...faces] = seen.faces.filter((face) => face.photo.id !== photo.id);
      return first ? [{ ...seen, faces: [first, ...faces] as const }] : [];
    }),
  }));
  const seen = photo.stones.flatMap(({ place, look }) => (look === null ? [] : [{ place, look }]));
  const proposals = proposeStones(seen, { checks: history.checks, stones: others }, null);
  return proposals.map((proposal) => {
    const stone = named.get(proposal.place);
    return stone === undefined ? { ...proposal, isUnsure: true } : { ...proposal, stone, isUnsure: false };
  });
}

/**
 * Gives a place to a stone; the place that had it takes what this one had, so that no stone lies in two places.
 *
 * @param stones - Stone of each place; null for a new one.
 */
export function swapStones(
  stones: ReadonlyMap<number, RecordId | null>,
  place: number,
  stone: RecordId | null,
): Map<number, RecordId | null> {
  const swapped = new Map(stones);
  const holder = stone === null ? undefined : [...stones].find(([, one]) => one === stone)?.[0];
  if (holder !== undefined && holder !== place) swapped.set(holder, stones.get(place) ?? null);
  return swapped.set(place, stone);
}
