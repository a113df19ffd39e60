import { appendFile, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Served, serveBuilt } from '../helpers/serveBuilt';
import { openKillable } from '../kill/killable';

const SAVING_MS = 1500;
let served: Served;
let profile: string;
const acknowledged: string[] = [];
const lives: { opened: boolean; lost: number; restored: number }[] = [];

beforeAll(async () => {
  served = await serveBuilt('tests/kill/killPage');
  profile = await mkdtemp(join(tmpdir(), 'glintgrade-torn-'));
});
afterAll(async () => {
  await served.close();
  await rm(profile, { recursive: true, maxRetries: 5, retryDelay: 200 });
});

/** Opens the browser, looks what is there, saves checks for a while, and kills it. */
async function live(): Promise<void> {
  const browser = await openKillable(served.url, profile, (said) => {
    if (said.kind === 'acknowledged') acknowledged.push(...said.records);
  });
  const found = await browser.page.evaluate(() => window.look()).catch(() => null);
  const there = new Set(found?.records);
  const lost = acknowledged.filter((id) => !there.has(id)).length;
  lives.push({ opened: found !== null, lost, restored: found?.restored ?? 0 });
  const before = acknowledged.length;
  const work = browser.page.evaluate(() => window.work.save()).catch(() => undefined);
  while (acknowledged.length === before) await new Promise((resolve) => setTimeout(resolve, 50));
  await new Promise((resolve) => setTimeout(resolve, SAVING_MS));
  await browser.kill();
  await work;
}

/** The start of an entry, as a log ends in when whoever wrote it was killed. Source: LevelDB, `doc/log_format.md`. */
async function tear(): Promise<void> {
  const stores = join(profile, 'Default', 'IndexedDB');
  const store = (await readdir(stores)).find((name) => name.endsWith('.leveldb'));
  const folder = join(stores, store ?? '');
  const log = (await readdir(folder))
    .filter((name) => name.endsWith('.log'))
    .sort()
    .at(-1);
  const [checksum, length, full] = [[1, 2, 3, 4], [0xd0, 7], [1]];
  await appendFile(
    join(folder, log ?? ''),
    Buffer.from([...checksum, ...length, ...full, ...Array(100).fill(5)]),
  );
}

it('has every acknowledged check again after the browser threw its torn store away', async () => {
  await live();
  await tear();
  // The store is still read, and written on behind the tear; the next start finds it broken and begins a new one.
  await live();
  await live();
  await live();
  expect(acknowledged.length).toBeGreaterThan(0);
  expect(lives.map(({ opened, lost }) => ({ opened, lost }))).toEqual(
    Array(4).fill({ opened: true, lost: 0 }),
  );
  // Or this shows nothing.
  expect(lives.some(({ restored }) => restored > 0)).toBe(true);
});
