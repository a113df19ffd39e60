import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { gradePhoto } from '../../src/state/gradePhoto';
import { benchStops, stopAfter } from '../../src/ui/bench/benchStops';
import { inventedReport } from '../helpers/inventedReport';

const graded = gradePhoto(inventedReport(7), { step: 'coarse', material: null, limits: DEFAULT_LIMITS });

it('goes through every pile, and within it to every stone, each once', () => {
  const stops = benchStops(graded);
  const stones = stops.flatMap(({ stone }) => stone ?? []);
  expect([...stones].sort()).toEqual([1, 2, 3, 4, 5, 6, 7]);
  for (const { action, pile, stone } of stops) {
    if (stone !== null) expect(pile).toContain(stone);
    for (const id of pile)
      expect(graded.grades.find((grade) => grade.id === id)?.verdict.action).toBe(action);
  }
  expect(stops[0]?.stone).toBeNull();
});

it('steps forth and back around the tray, and from pile to pile', () => {
  const stops = benchStops(graded);
  const last = stops.length - 1;
  expect([stopAfter(stops, 0, 1), stopAfter(stops, last, 1), stopAfter(stops, 0, -1)]).toEqual([1, 0, last]);
  const piles = stops.flatMap(({ stone }, index) => (stone === null ? [index] : []));
  expect(piles.length).toBeGreaterThan(1);
  expect(stopAfter(stops, 1, 'pile')).toBe(piles[1]);
  expect(stopAfter(stops, last, 'pile')).toBe(0);
});

it('has no stop in a tray without stones', () => {
  expect(benchStops({ report: { ...graded.report, stones: [] }, grades: [], contamination: null })).toEqual(
    [],
  );
});
