import { ceilingGu60 } from '../../grading/ceilingGu60';
import { refractiveIndex } from '../../grading/refractiveIndex';
import type { BatchDigest } from '../../history/batchDigest';
import type { Face, StoneCheck, StoneHistory } from '../../history/batchHistory';
import { checkGrade } from '../../history/checkGrade';
import type { BeforeAfter, CardMoment } from '../../picture/beforeAfterCard';
import { bestTurn } from '../../picture/bestTurn';
import { texts } from '../../texts/speech';
import { stoneTitle } from '../parts/stoneTitle';

/** What the card says in the language spoken now, and the photographs that go into it, the earlier one first. */
export interface CardWithFaces {
  readonly card: BeforeAfter;
  readonly faces: readonly [before: Face, after: Face];
}

/**
 * The card of a stone's first and last check.
 *
 * @param history - The stone's checks.
 * @param batch - What is known of its batch; null when that was not read yet.
 * @returns Null with fewer than two checks.
 */
export function cardOf({ stone, checks }: StoneHistory, batch: BatchDigest | null): CardWithFaces | null {
  const [first, last] = [checks[0], checks.at(-1)];
  if (!first || !last || checks.length < 2) return null;
  const { before, after, turnDeg } = alikeFaces(first, last);
  const material = stone.material ?? last.check.material;
  const digest = batch?.stones.find((one) => one.stone === stone.id) ?? null;
  const ceiling =
    checkGrade(last, stone.material).gloss?.ceilingGu60 ?? ceilingGu60(refractiveIndex(material).n);
  const card: BeforeAfter = {
    title: stoneTitle(stone.name),
    about: [
      material === null ? '' : texts().verdicts.materials[material],
      stone.source,
      batch?.name ?? '',
    ].filter((words) => words.trim() !== ''),
    isFavorite: stone.isFavorite,
    before: momentOf(first, before, stone.material, turnDeg),
    after: momentOf(last, after, stone.material, 0),
    ceilingGu60: ceiling,
    steps: [...new Set(checks.map(({ check }) => check.step))],
    weeksInCoarse: digest?.coarseDays == null ? null : Math.round(digest.coarseDays / 7),
    checkCount: checks.length,
  };
  return { card, faces: [before, after] };
}

/**
 * Of all sides seen at two checks the two whose silhouettes fit best, and the turn of the earlier one that makes them.
 * The later one stays as it lay, under the lamp that its shine is seen in.
 */
function alikeFaces(first: StoneCheck, last: StoneCheck) {
  const pairs = first.faces.flatMap((before) =>
    last.faces.flatMap((after) => {
      const [a, b] = [after.stone.look?.silhouette, before.stone.look?.silhouette];
      return a && b && a.length > 0 && a.length === b.length ? [{ before, after, ...bestTurn(a, b) }] : [];
    }),
  );
  const unturned = { before: first.faces[0], after: last.faces[0], turnDeg: 0 };
  return pairs.toSorted((one, other) => one.apart - other.apart)[0] ?? unturned;
}

function momentOf(
  seen: StoneCheck,
  { photo, stone }: Face,
  material: StoneHistory['stone']['material'],
  turnDeg: number,
): CardMoment {
  const { gloss } = checkGrade(seen, material);
  return {
    day: seen.check.day,
    step: seen.check.step,
    stone: { outline: stone.outline, mmPerPx: photo.mmPerPx },
    turnDeg,
    lengthMm: Math.max(...seen.faces.map((face) => face.stone.lengthMm)),
    gloss: gloss && { gu60: gloss.gu60, gu60Low: gloss.gu60Low, gu60High: gloss.gu60High },
  };
}
