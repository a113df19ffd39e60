import { expect, it } from 'vitest';
import { gradeStone } from '../../src/grading/gradeStone';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { fracture, highlightOf, measuredStone, pits } from '../helpers/measuredStone';

it('puts gloss, flaws, smoothness and verdict together', () => {
  const stone = measuredStone({ id: 7, highlight: highlightOf(0.1), flaws: [...pits(5), fracture(4)] });
  const grade = gradeStone(stone, { step: 'fine', material: 'agate', limits: DEFAULT_LIMITS });
  expect(grade.id).toBe(7);
  expect(grade.pitsPerCm2).toBeCloseTo(1, 12);
  expect(grade.fractureMm).toBe(4);
  expect(grade.gloss?.finish).toBe('satin');
  expect(grade.smoothness).toBeLessThan(100);
  expect(grade.smoothnessParts).toHaveLength(4);
  // Source: ASTM G46, standard rating chart, from memory: 1 pit per cm² is A-2; pits of half a millimeter are below B-1.
  expect(grade.pitRating).toEqual({ density: 'A-2', size: null });
  expect(grade.verdict.action).toBe('back-to-coarse');
});

it('follows the owner to looser limits', () => {
  const stone = measuredStone({ flaws: pits(5) });
  const limits = { ...DEFAULT_LIMITS, coarse: { ...DEFAULT_LIMITS.coarse, maxPitsPerCm2: 2 } };
  expect(gradeStone(stone, { step: 'coarse', material: null, limits: null }).verdict.action).toBe('repeat');
  expect(gradeStone(stone, { step: 'coarse', material: null, limits }).verdict.action).toBe('advance');
});

it('does not judge a stone of few pixels when the scale is told', () => {
  const settings = { step: 'coarse', material: null, limits: null } as const;
  expect(gradeStone(measuredStone(), { ...settings, mmPerPx: 1 }).verdict.action).toBe('look-closer');
  expect(gradeStone(measuredStone(), settings).verdict.action).toBe('advance');
});

it('grades forty stones again faster than a screen is drawn', () => {
  const stones = Array.from({ length: 40 }, (_, id) => {
    return measuredStone({ id, highlight: highlightOf(0.01 * (id + 1)), flaws: pits(id % 4) });
  });
  const gradeAll = () =>
    stones.map((stone) => gradeStone(stone, { step: 'fine', material: 'jasper', limits: null }));
  gradeAll();
  const start = performance.now();
  for (let round = 0; round < 10; round++) gradeAll();
  expect((performance.now() - start) / 10).toBeLessThan(100);
});
