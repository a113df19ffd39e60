import { expect, it } from 'vitest';
import { forecast } from '../../src/grading/forecast';
import { CHECKS, drawHistories, drawLaws, WORLDS } from './grindHistories';
import { idealForecast } from './idealForecast';

const NOISE = { kept: 0.1, fresh: 0.1 };

it('draws levels that fall to the limit when it says they do', () => {
  for (const { clearsAt, truth } of drawLaws(200, 3, WORLDS.usual!)) {
    truth.forEach((level, t) => {
      expect(level <= 1).toBe(clearsAt !== null && t >= clearsAt);
    });
  }
});

it('draws the same histories for the same seed, others for another, a quarter of which never clear', () => {
  const drawn = (seed: number) => drawHistories(1000, seed, NOISE, WORLDS.usual!);
  expect(drawn(4)).toEqual(drawn(4));
  expect(drawn(5)).not.toEqual(drawn(4));
  const staying = drawn(4).filter(({ clearsAt }) => clearsAt === null).length;
  expect(staying).toBeGreaterThan(210);
  expect(staying).toBeLessThan(290);
});

it('reads levels with the noise asked for', () => {
  // Half of Student's t with two degrees of freedom lies within 0.8165 of its scale.
  const offs = drawHistories(1000, 6, { kept: 0, fresh: 0.1 }, WORLDS.usual!).flatMap(({ truth, seen }) =>
    truth.map((level, t) => Math.abs(Math.sqrt(seen[t]!) - Math.sqrt(level))),
  );
  expect(offs.length).toBe(1000 * CHECKS);
  const within = offs.filter((off) => off <= 0.08165).length / offs.length;
  expect(within).toBeGreaterThan(0.485);
  expect(within).toBeLessThan(0.515);
});

it('agrees with the forecast on histories of the world that the forecast assumes', () => {
  // Two ways to the same integral: laws drawn at random, and laws on a grid.
  const ideal = idealForecast(NOISE, WORLDS.usual!);
  const offs = drawHistories(40, 7, NOISE, WORLDS.usual!).flatMap(({ seen }) =>
    [3, 6, 9].map((checks) => {
      const levels = seen.slice(0, checks);
      return Math.abs(ideal(levels).neverOdds - forecast(levels, NOISE)!.neverOdds);
    }),
  );
  expect(offs.reduce((sum, off) => sum + off, 0) / offs.length).toBeLessThan(0.03);
  expect(Math.max(...offs)).toBeLessThan(0.25);
});
