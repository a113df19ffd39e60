import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { batchHistory } from '../../src/history/batchHistory';
import { gradePhoto } from '../../src/state/gradePhoto';
import { mindedVerdicts, withMinded } from '../../src/state/mindedVerdicts';
import { inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';
import { inventedReport } from '../helpers/inventedReport';

const FLAT = [14, 9, 7.4, 7, 7, 7].map((fractureMm) => [{ fractureMm }, {}]);

/** The last check of a batch whose first stone no longer gets better. */
function last() {
  const history = batchHistory(inventedBatch(weeksInCoarse(FLAT)));
  const { check } = history.checks.at(-1)!;
  const kept = { batch: history.batch.id, photo: check.id, check: check.id, fresh: [] };
  return { history, kept, stones: mindedVerdicts(kept, history, new Map()) };
}

it('knows each stone of a kept photo, and minds its earlier checks', () => {
  const { stones } = last();
  expect([...stones].map(([place, { name, checkCount }]) => [place, name, checkCount])).toEqual([
    [1, '1', 6],
    [2, '2', 6],
  ]);
  expect(stones.get(1)).toMatchObject({ photoAction: 'repeat', verdict: { action: 'set-aside' } });
  expect(stones.get(2)!.verdict.action).toBe(stones.get(2)!.photoAction);
});

it('minds only what came before the photo', () => {
  const { history } = last();
  const { check } = history.checks[0]!;
  const kept = { batch: history.batch.id, photo: check.id, check: check.id, fresh: [] };
  expect(mindedVerdicts(kept, history, new Map()).get(1)!.checkCount).toBe(1);
});

it('says nothing of a photo whose check is not there', () => {
  const { history } = last();
  const elsewhere = { batch: history.batch.id, photo: '01Q', check: '01Q', fresh: [] };
  expect(mindedVerdicts(elsewhere, history, new Map()).size).toBe(0);
});

it('puts those verdicts in place of the photo alone, but not over a stone graded otherwise by now', () => {
  const graded = gradePhoto(inventedReport(2), { step: 'coarse', material: null, limits: DEFAULT_LIMITS });
  const minded = {
    stone: 's',
    name: '1',
    checkCount: 2,
    decision: null,
    verdict: { action: 'set-aside', reasons: ['x'] },
  } as const;
  const [first, second] = graded.grades.map(({ verdict }) => verdict.action);
  const other = second === 'advance' ? 'repeat' : 'advance';
  const stones = new Map([
    [1, { ...minded, photoAction: first! }],
    [2, { ...minded, photoAction: other } as const],
  ]);
  const whole = withMinded(graded, stones);
  expect(whole.grades.map(({ verdict }) => verdict.action)).toEqual(['set-aside', second]);
  expect(withMinded(graded, stones)).toBe(whole);
});

it('shows what the owner decided, and keeps the advice in sight', () => {
  const graded = gradePhoto(inventedReport(1), { step: 'coarse', material: null, limits: DEFAULT_LIMITS });
  const [photoAction] = graded.grades.map(({ verdict }) => verdict.action);
  const advised = { action: 'set-aside', reasons: ['It will hardly clear.'] } as const;
  const about = { stone: 's', name: '1', checkCount: 2, photoAction: photoAction!, verdict: advised };
  const [grade] = withMinded(graded, new Map([[1, { ...about, decision: 'repeat' }]])).grades;
  expect(grade!.verdict).toEqual({
    action: 'repeat',
    reasons: ['You decided so; the advice was: set aside.', 'It will hardly clear.'],
  });
});
