import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Served, serveBuilt } from '../helpers/serveBuilt';
import { openKillable } from '../kill/killable';

const SAVING_MS = 1500;
const MOST_TRIES = 4;
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

const wasThrownAway = () => lives.some(({ restored }) => restored > 0);

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

/** Spoils the middle of the store's log, whose entries carry checksums. Source: LevelDB, `doc/log_format.md`. */
async function spoil(): Promise<void> {
  const stores = join(profile, 'Default', 'IndexedDB');
  const store = (await readdir(stores)).find((name) => name.endsWith('.leveldb'));
  const folder = join(stores, store ?? '');
  const log = (await readdir(folder))
    .filter((name) => name.endsWith('.log'))
    .sort()
    .at(-1);
  const bytes = await readFile(join(folder, log ?? ''));
  const middle = bytes.length >> 1;
  await writeFile(join(folder, log ?? ''), bytes.fill(0xa5, middle, middle + 100));
}

it('has every acknowledged check again after the browser threw its spoilt store away', async () => {
  await live();
  // A log that had just been begun anew holds too little to be spoilt.
  for (let tries = 0; tries < MOST_TRIES && !wasThrownAway(); tries++) {
    await spoil();
    await live();
  }
  await live();
  expect(acknowledged.length).toBeGreaterThan(0);
  expect(lives.filter(({ opened, lost }) => !opened || lost > 0)).toEqual([]);
  // Or this shows nothing.
  expect(wasThrownAway()).toBe(true);
});
