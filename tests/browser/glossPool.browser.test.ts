import { expect, it } from 'vitest';
import type { StoneCrop } from '../../src/analysis/stoneCrop';
import { stoneGloss } from '../../src/analysis/stoneGloss';
import { openGlossPool } from '../../src/worker/glossPool';
import { plain } from '../helpers/drawScene';
import { drawStone } from '../helpers/drawStone';

function stoneOf(alpha: number) {
  const { stone, mask, light } = drawStone({ alpha, colorAt: plain(0.3, 0.1, 0.05) });
  const toPhoto: StoneCrop['toPhoto'] = (row, column) => [200 + (row + 0.5) * 2 - 0.5, 99 + column * 2];
  return { crop: { stone, mask, factor: 2, toPhoto }, light };
}
const stones = [0.02, 0.08, 0.3, 0.05, 0.15].map(stoneOf);
const here = stones.map(({ crop, light }) => stoneGloss(crop, light));

it('reads several stones at once, in the order asked for, with the figures of one by one', async () => {
  const started: Worker[] = [];
  const pool = openGlossPool(2, () => {
    const url = new URL('../../src/worker/glossWorker.ts', import.meta.url);
    const worker = new Worker(url, { type: 'module' });
    started.push(worker);
    return worker;
  })!;
  const there = await Promise.all(stones.map(({ crop, light }) => pool.read(crop, light)));
  expect(started).toHaveLength(2);
  expect(there).toEqual(here);
  for (const worker of started) worker.terminate();
});

it('reads in place what its workers cannot, as when they do not load', async () => {
  const broken: Worker[] = [];
  const pool = openGlossPool(3, () => {
    const worker = new Worker('/no-such-worker.js', { type: 'module' });
    broken.push(worker);
    return worker;
  })!;
  const { crop, light } = stones[1]!;
  expect(await pool.read(crop, light)).toEqual(here[1]);
  // By now it is known that none can be loaded.
  expect(await Promise.all(stones.map((one) => pool.read(one.crop, one.light)))).toEqual(here);
  expect(broken).toHaveLength(3);
});

it('lets go of what it was asked for, and reads what it is asked after that', async () => {
  const pool = openGlossPool(2)!;
  let isRead = false;
  for (const { crop, light } of stones)
    void pool.read(crop, light).then(() => {
      isRead = true;
    });
  pool.drop();
  const { crop, light } = stones[2]!;
  expect(await pool.read(crop, light)).toEqual(here[2]);
  expect(isRead).toBe(false);
  pool.drop();
});

it('tells what breaks where it is asked for', async () => {
  const pool = openGlossPool(2)!;
  const { crop, light } = stones[0]!;
  const without = { ...light, half: undefined as never };
  const message = (error: Error) => error.message;
  const alone = await Promise.resolve()
    .then(() => stoneGloss(crop, without))
    .then(() => 'nothing', message);
  expect(alone).not.toBe('nothing');
  expect(await pool.read(crop, without).then(() => 'nothing', message)).toBe(alone);
});

it('is left out with one core', () => {
  expect(openGlossPool(1)).toBeNull();
});
