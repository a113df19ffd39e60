import { expect, it } from 'vitest';
import { joinFaces } from '../../src/history/joinFaces';
import { INVENTED_CM2, inventedBatch, type SeenSo } from '../helpers/inventedBatch';

const facesOf = (...seen: SeenSo[]) =>
  inventedBatch(seen.map((stone) => ({ step: 'fine', day: 7, stones: [stone] }))).checks.map(
    ({ stones }) => stones[0]!,
  );

it('adds up flaws and surface, and takes the largest outline', () => {
  const joined = joinFaces(facesOf({ pits: 2, lengthMm: 30 }, { pits: 1, fractureMm: 3, lengthMm: 31 }));
  expect(joined.flaws.map(({ kind }) => kind)).toEqual(['pit', 'pit', 'pit', 'fracture']);
  expect(joined.inspectedCm2).toBe(2 * INVENTED_CM2);
  expect(joined.lengthMm).toBe(31);
});

it('is as polished as its worst side', () => {
  const middle = (faces: ReturnType<typeof facesOf>) => joinFaces(faces).highlight!.byIndex[1]!.alpha;
  expect(middle(facesOf({ alpha: 0.02 }, { alpha: 0.1 }))).toBe(0.1);
  expect(middle(facesOf({ alpha: 0.1 }, { alpha: 0.02 }))).toBe(0.1);
});

it('takes the side that tells its gloss, and gives no bound beside it', () => {
  const joined = joinFaces(facesOf({}, { alpha: 0.05 }));
  expect(joined.highlight!.byIndex[1]!.alpha).toBe(0.05);
  expect(joined.glossBound).toBeNull();
  expect(joinFaces(facesOf({}, {})).glossBound).not.toBeNull();
});

it('says the same whichever side comes first, but for its number', () => {
  const [a, b] = facesOf({ pits: 2, alpha: 0.05 }, { fractureMm: 2, alpha: 0.08 });
  const { flaws: one, ...joined } = joinFaces([a!, b!]);
  const { flaws: other, ...turned } = joinFaces([b!, a!]);
  expect(joined).toEqual(turned);
  expect(new Set(one)).toEqual(new Set(other));
});

it('needs a face', () => {
  expect(() => joinFaces([])).toThrow('at least one face');
});
