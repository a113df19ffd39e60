import { expect, it } from 'vitest';
import { drawHistories, WORLDS } from './grindHistories';
import { fitNoise } from './noiseFit';

/** Repeated readings of stones of level 4, drawn as the forecast's bench draws them. */
function readings(kept: number, fresh: number) {
  const still = {
    ...WORLDS.usual!,
    staying: 0,
    start: { middle: 9, lnSpread: 0.1 },
    tau: { middle: 1e6, lnSpread: 0 },
  };
  return drawHistories(60, 11, { kept, fresh }, still).map(({ seen, truth }) =>
    seen.slice(0, 4).map((found, t) => ({ found, true: truth[t]!, limit: 1 })),
  );
}

it('finds the noise that readings were drawn with, and that it has heavy tails', () => {
  const found = fitNoise(readings(0.2, 0.07));
  expect(found.kept).toBeGreaterThan(0.16);
  expect(found.kept).toBeLessThan(0.25);
  expect(found.fresh).toBeGreaterThan(0.058);
  expect(found.fresh).toBeLessThan(0.084);
  expect(found.lnOverNormal).toBeGreaterThan(10);
});

it('says of readings that scatter evenly that a normal distribution fits them better', () => {
  const evenly = [-1.5, -1, -0.6, -0.3, 0, 0.3, 0.6, 1, 1.5];
  const stones = evenly.map((_, k) =>
    evenly.map((_z, t) => ({ found: (3 + 0.1 * evenly[(k + 4 * t) % 9]!) ** 2, true: 9, limit: 1 })),
  );
  expect(fitNoise(stones).lnOverNormal).toBeLessThan(0);
});
