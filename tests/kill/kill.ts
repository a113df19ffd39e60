/**
 * Kills Chromium (SIGKILL to all of its processes) at random moments while it saves checks, takes bundles in, brings an
 * old journal up to date and deletes photos at hand, then opens it again on the same profile and looks: `npm run test:kill`,
 * 200 times, or `-- --times N --seed N`. Everything acknowledged must be there, nothing may be half-written, an import
 * must be there whole or not at all, and the journal must open. Prints one row for each kind of work, and exits with 1
 * when a promise is broken. A process that is killed leaves what the system has already taken over; power that fails
 * may not, which is why the journal asks for strict durability.
 */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { serveBuilt } from '../helpers/serveBuilt';
import { type Killable, openKillable } from './killable';
import type { Said } from './killPage/main';

const KINDS = ['save', 'import', 'migration', 'deletion'] as const;
type Kind = (typeof KINDS)[number];
/** Killed at a moment evenly spread over this time after the work has begun, ms. */
const WITHIN_MS = 1500;
/** A profile is thrown away after so many kills, so that looking stays quick. */
const PER_PROFILE = 12;

const { values } = parseArgs({ options: { times: { type: 'string' }, seed: { type: 'string' } } });
const times = Number(values.times ?? 200);
let state = Number(values.seed ?? 20260302);
/** Evenly spread from 0 to 1, the same for the same seed. Source: mulberry32, public domain; from memory. */
function random(): number {
  state = (state + 0x6d2b79f5) | 0;
  let t = Math.imul(state ^ (state >>> 15), 1 | state);
  t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
  return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
}

/** What one profile was told, over all its lives. */
class Told {
  readonly records = new Set<string>();
  readonly photos = new Set<string>();
  readonly atHand = new Set<string>();
  readonly dropped = new Set<string>();
  /** Laid down last: nothing has told the person yet that it is remembered. */
  laidLast: string | null = null;
  imports: { readonly records: readonly string[] }[] = [];
  migrating: { readonly database: string; readonly count: number } | null = null;
  count = 0;

  hear(said: Said): void {
    this.count++;
    if (said.kind === 'acknowledged') {
      for (const id of said.records) this.records.add(id);
      for (const key of said.photos) this.photos.add(key);
    } else if (said.kind === 'begun') this.imports.push(said);
    else if (said.kind === 'laid') {
      if (this.laidLast !== null) this.atHand.add(this.laidLast);
      this.laidLast = said.photo;
    } else if (said.kind === 'dropped') {
      this.atHand.delete(said.photo);
      if (this.laidLast === said.photo) this.laidLast = null;
      this.dropped.add(said.photo);
    } else if (said.kind === 'migrating') this.migrating = said;
  }
}

/** Looks at a profile after it was killed. @returns What is wrong. */
async function faults({ page }: Killable, told: Told): Promise<string[]> {
  const found = await page.evaluate(() => window.look());
  if (found.restored > 0) console.log(`${found.restored} records came back from the safety copy`);
  const [records, photos, atHand] = [new Set(found.records), new Set(found.photos), new Set(found.atHand)];
  const wrong = [...found.halves];
  const missing = (kind: string, wanted: Iterable<string>, there: Set<string>) => {
    for (const one of wanted) if (!there.has(one)) wrong.push(`${kind} ${one} is lost`);
  };
  missing('record', told.records, records);
  missing('photo', told.photos, photos);
  missing('photo at hand', told.atHand, atHand);
  if (told.laidLast !== null && atHand.has(told.laidLast)) told.atHand.add(told.laidLast);
  else if (told.laidLast !== null) lastPhotosLost++;
  told.laidLast = null;
  for (const key of told.dropped) if (atHand.has(key)) wrong.push(`photo ${key} came back`);
  for (const { records: wanted } of told.imports) {
    const there = wanted.filter((id) => records.has(id)).length;
    if (there !== 0 && there !== wanted.length)
      wrong.push(`${there} of ${wanted.length} records of a bundle`);
  }
  if (told.migrating) {
    const { database, count } = told.migrating;
    const kept = await page.evaluate((name) => window.lookMigrated(name), database);
    if (kept !== count) wrong.push(`${kept} of ${count} records after a migration`);
    told.migrating = null;
  }
  return wrong;
}

const served = await serveBuilt('tests/kill/killPage');
const rows = new Map<Kind, { kills: number; acknowledged: number; faults: number }>(
  KINDS.map((kind) => [kind, { kills: 0, acknowledged: 0, faults: 0 }]),
);
let profile = '';
let lastPhotosLost = 0;
let told = new Told();
let last: Kind | null = null;
for (let round = 0; round <= times; round++) {
  if (round % PER_PROFILE === 0 && round < times) {
    // The last kill of a profile is looked at before the profile goes.
    if (profile !== '') await lookOnce();
    if (profile !== '') await rm(profile, { recursive: true, maxRetries: 5, retryDelay: 200 });
    profile = await mkdtemp(join(tmpdir(), 'glintgrade-kill-'));
    told = new Told();
    last = null;
  }
  if (round === times) {
    await lookOnce();
    break;
  }
  const browser = await openKillable(served.url, profile, (said) => told.hear(said));
  await judge(browser);
  const kind = KINDS[round % KINDS.length]!;
  const before = told.count;
  const work = browser.page.evaluate((what) => window.work[what](), kind).catch(() => undefined);
  await new Promise((resolve) => setTimeout(resolve, random() * WITHIN_MS));
  await browser.kill();
  await work;
  const row = rows.get(kind)!;
  row.kills++;
  row.acknowledged += told.count - before;
  last = kind;
  if ((round + 1) % 20 === 0) console.log(`${round + 1} of ${times}`);
}
await rm(profile, { recursive: true, maxRetries: 5, retryDelay: 200 });
await served.close();

async function lookOnce(): Promise<void> {
  const browser = await openKillable(served.url, profile, (said) => told.hear(said));
  await judge(browser);
  await browser.kill();
}

async function judge(browser: Killable): Promise<void> {
  if (last === null) return;
  const wrong = await faults(browser, told).catch((error: Error) => [`it does not open: ${error.message}`]);
  for (const fault of wrong.slice(0, 5)) console.log(`after ${last}: ${fault}`);
  rows.get(last)!.faults += wrong.length;
  last = null;
}

console.log('\nkilled while    kills  heard before  faults');
for (const [kind, row] of rows)
  console.log(
    `${kind.padEnd(14)}${String(row.kills).padStart(7)}${String(row.acknowledged).padStart(14)}${String(row.faults).padStart(8)}`,
  );
console.log(`photos at hand that were gone, laid down in the moment of the kill: ${lastPhotosLost}`);
process.exitCode = [...rows.values()].some((row) => row.faults > 0) ? 1 : 0;
