import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import type { MaterialName } from '../../src/grading/materials';
import { batchDigest } from '../../src/history/batchDigest';
import { batchHistory } from '../../src/history/batchHistory';
import { glossProgress } from '../../src/history/glossProgress';
import { learnedLimits } from '../../src/history/learnedLimits';
import { usualEnds } from '../../src/history/usualEnds';
import { verdictNow } from '../../src/history/verdictNow';
import { type CheckSo, inventedBatch, type SeenSo, weeksInCoarse } from '../helpers/inventedBatch';

const checksOf = (checks: readonly CheckSo[], material: MaterialName | null = null) =>
  batchHistory(inventedBatch(checks, { material })).stones[0]!.checks;
const coarse = (...seen: SeenSo[]) => weeksInCoarse(seen.map((stone) => [stone]));
const at = (step: CheckSo['step'], day: number, seen: SeenSo): CheckSo => ({ step, day, stones: [seen] });

it('agrees with the check where there is nothing to add', () => {
  const checks = checksOf(coarse({ pits: 8 }, { pits: 5 }));
  expect(verdictNow(checks, null, null).action).toBe(checks.at(-1)!.faces[0].stone.action);
});

it('sets aside what repeating will not clear', () => {
  const flat = [14, 9, 7.4, 7, 7, 7].map((fractureMm) => ({ fractureMm }));
  const checks = checksOf(coarse(...flat));
  expect(['repeat', 'back-to-coarse']).toContain(checks.at(-1)!.faces[0].stone.action);
  const { action, reasons } = verdictNow(checks, null, null);
  expect(action).toBe('set-aside');
  expect(reasons[0]).toContain('will hardly clear');
  expect(reasons.length).toBeGreaterThan(1);
});

it('sends a stone back whose fracture opened in a fine step', () => {
  const checks = checksOf([...coarse({}), at('fine', 14, { fractureMm: 6 })]);
  const { action, reasons } = verdictNow(checks, null, null);
  expect(action).toBe('back-to-coarse');
  expect(reasons[0]).toContain('a fracture opened');
  const same = checksOf([at('medium', 7, { fractureMm: 6 }), at('fine', 14, { fractureMm: 6 })]);
  expect(verdictNow(same, null, null).reasons[0]).not.toContain('opened');
});

it('calls a satin stone finished that sits where its material usually ends, and not one below', () => {
  const polished = (alpha: number) => checksOf([at('polish', 30, { alpha })], 'jasper');
  const usual = { lowerQuartileGu60: 25, stones: 8 };
  expect(verdictNow(polished(0.07), 'jasper', null).action).toBe('repeat');
  expect(verdictNow(polished(0.07), 'jasper', { ...usual, lowerQuartileGu60: 15 })).toMatchObject({
    action: 'finished',
  });
  const below = verdictNow(polished(0.08), 'jasper', usual);
  expect(below.action).toBe('repeat');
  expect(below.reasons.at(-1)).toContain('Under-polished');
});

it('calls a satin stone finished that one more polish did not help', () => {
  const twice = (first: number, then: number) =>
    checksOf([at('polish', 30, { alpha: first }), at('polish', 37, { alpha: then })], 'jasper');
  expect(verdictNow(twice(0.07, 0.07), 'jasper', null)).toMatchObject({ action: 'finished' });
  expect(verdictNow(twice(0.1, 0.07), 'jasper', null).action).toBe('repeat');
});

it('asks for a thumb-nail when pits have not become fewer in three checks', () => {
  const standing = verdictNow(
    checksOf(coarse({ pits: 6 }, { pits: 6 }, { pits: 6 }, { pits: 6 })),
    null,
    null,
  );
  expect(standing.reasons.join(' ')).toContain('thumb-nail');
  const falling = verdictNow(
    checksOf(coarse({ pits: 9 }, { pits: 7 }, { pits: 6 }, { pits: 4 })),
    null,
    null,
  );
  expect(falling.reasons.join(' ')).not.toContain('three checks');
});

it('needs a check', () => {
  expect(() => verdictNow([], null, null)).toThrow('at least one check');
});

it('knows the usual end of a material from five finished stones on', () => {
  const finished = (count: number) =>
    batchDigest(
      inventedBatch(
        [{ step: 'polish', day: 30, stones: Array.from({ length: count }, () => ({ alpha: 0.008 })) }],
        {
          material: 'agate',
        },
      ),
    );
  expect(usualEnds([finished(4)]).size).toBe(0);
  const end = usualEnds([finished(3), finished(2)]).get('agate')!;
  expect(end.stones).toBe(5);
  expect(end.lowerQuartileGu60).toBeGreaterThan(85);
});

it('tells late from stuck from on time over the fine steps', () => {
  const said = (...checks: CheckSo[]) => glossProgress(checksOf(checks), null)?.kind ?? null;
  expect(said(...coarse({}))).toBeNull();
  expect(said(at('fine', 7, { alpha: 0.2 }))).toBe('on-time');
  expect(said(at('fine', 7, { alpha: 0.4 }))).toBe('late');
  expect(said(at('fine', 7, { alpha: 0.4 }), at('prepolish', 14, { alpha: 0.4 }))).toBe('stuck');
  expect(said(at('fine', 7, { alpha: 0.4 }), at('prepolish', 14, { alpha: 0.2 }))).toBe('late');
});

it('learns a limit from what the owner lets go, and none from what is held back', () => {
  const records = inventedBatch(weeksInCoarse([Array.from({ length: 6 }, () => ({ fractureMm: 3 }))]));
  const decide = (action: 'advance' | 'repeat') =>
    records.stones.map(({ id }, i) => ({
      ...({ kind: 'decision', id: `01Z${i}`, batch: records.batch.id } as const),
      ...{ check: records.checks[0]!.id, stone: id, action },
    }));
  const learned = (decisions: ReturnType<typeof decide>) =>
    learnedLimits(batchHistory({ ...records, decisions }).stones, 'coarse', DEFAULT_LIMITS.coarse);
  expect(learned(decide('advance'))).toMatchObject([{ limit: 'maxFractureMm', value: 3 }]);
  expect(learned(decide('repeat'))).toEqual([]);
  expect(learned(decide('advance').slice(0, 3))).toEqual([]);
  expect(learned([...decide('advance').slice(0, 4), ...decide('repeat').slice(4)])).toEqual([]);
});
