import { Dexie } from 'dexie';
import { afterEach, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { batchDigest } from '../../src/history/batchDigest';
import { mergeRecords } from '../../src/journal/mergeRecords';
import { type Journal, openJournal } from '../../src/journal/openJournal';
import type { CheckRecord } from '../../src/journal/records';
import { upgradeRecords } from '../../src/journal/upgradeRecords';
import { batchRecord as batch } from '../helpers/batchRecord';
import { FIRST_VERSION } from '../helpers/firstVersion';
import { inventedBatch, recordsOf, weeksInCoarse } from '../helpers/inventedBatch';
import { SECOND_VERSION } from '../helpers/secondVersion';

let journal: Journal | null = null;
let number = 0;

/** A journal of its own for each test, in the browser's real IndexedDB. */
async function open(name = `test journal ${++number} ${Math.random()}`): Promise<Journal> {
  journal = await openJournal(name);
  return journal;
}

afterEach(() => journal?.close());

const check = (id: string, of: string): CheckRecord => ({
  ...({ kind: 'check', id, batch: of, faceOf: null, step: 'coarse', material: null } as const),
  ...{ limits: DEFAULT_LIMITS.coarse, day: '2026-03-09', mmPerPx: 0.12, longestPx: 2000, photo: null },
  stones: [],
});

it('gives back what was added, also after it was closed and opened again', async () => {
  const name = `kept journal ${Math.random()}`;
  const first = await open(name);
  await first.add([batch('01B', 'river pebbles'), check('01C', '01B')]);
  first.close();
  const again = await open(name);
  expect(await again.all()).toEqual([batch('01B', 'river pebbles'), check('01C', '01B')]);
});

it('adds the same records any number of times, and never changes one', async () => {
  const kept = await open();
  const [one, changed] = [batch('01A', 'a'), batch('01A', 'b')];
  await kept.add([one]);
  await kept.add([one]);
  for (const another of [changed, batch('01A', '')]) {
    const adding = kept.add([batch('019', 'fresh'), another]);
    await expect(adding).rejects.toMatchObject({ name: 'DifferingRecord', id: '01A' });
  }
  expect(await kept.all()).toEqual([one]);
});

it('merges like the plain union of two journals', async () => {
  const kept = await open();
  const mine = [batch('01A', 'a'), check('01D', '01A')];
  const theirs = [batch('01B', 'b'), check('01C', '01B'), batch('01A', 'a')];
  await kept.add(mine);
  await kept.add(theirs);
  expect(await kept.all()).toEqual(mergeRecords(mine, theirs));
});

it('finds the records of a batch, and none of another', async () => {
  const kept = await open();
  const one = inventedBatch(weeksInCoarse([[{ pits: 3 }], [{ pits: 1 }]]));
  const other = inventedBatch(weeksInCoarse([[{}]]), { letter: 'C' });
  await kept.add([...recordsOf(other), ...recordsOf(one)]);
  expect((await kept.ofKind('batch')).map(({ id }) => id)).toEqual([one.batch.id, other.batch.id]);
  expect(await kept.batch(one.batch.id)).toEqual(one);
  expect(await kept.batch('01Q')).toBeNull();
});

it('keeps a digest of each batch up to date with everything that is added', async () => {
  const kept = await open();
  const records = inventedBatch(weeksInCoarse([[{ pits: 3 }], [{ pits: 1 }]]));
  const { checks, identities } = records;
  await kept.add(recordsOf({ ...records, checks: checks.slice(0, 1), identities: identities.slice(0, 1) }));
  expect((await kept.digests()).map(({ checkCount }) => checkCount)).toEqual([1]);
  await kept.add([checks[1]!, identities[1]!, batch('01Z', 'renamed', records.batch.id)]);
  expect(await kept.digests()).toEqual([{ ...batchDigest(records), name: 'renamed' }]);
});

it('opens a journal of the first version, with all of it', async () => {
  const name = `first version ${Math.random()}`;
  const old = new Dexie(name);
  old.version(1).stores({ records: '&id, kind, [kind+batch+id], [kind+check]', photos: '&key' });
  await old.open();
  await old.table('records').bulkAdd([...FIRST_VERSION]);
  await old.table('photos').add({ key: 'ab12', photo: new Blob(['photo']), thumbnail: new Blob(['thumb']) });
  old.close();
  const kept = await open(name);
  expect(await kept.all()).toEqual(upgradeRecords(FIRST_VERSION, 1));
  expect((await kept.digests()).map(({ name: called, checkCount }) => [called, checkCount])).toEqual([
    ['Brook pebbles', 1],
  ]);
  expect(await (await kept.photo('ab12'))?.photo.text()).toBe('photo');
});

it('opens a journal of the second version, with all of it', async () => {
  const name = `second version ${Math.random()}`;
  const old = new Dexie(name);
  const digested = { photos: '&key', digests: '&batch' };
  old.version(1).stores({ records: '&id, kind, [kind+batch+id], [kind+check]', photos: '&key' });
  old.version(2).stores({ records: '&id, kind, [batch+kind+id]', ...digested });
  await old.open();
  await old.table('records').bulkAdd([...SECOND_VERSION]);
  old.close();
  const kept = await open(name);
  expect(await kept.all()).toEqual(upgradeRecords(SECOND_VERSION, 2));
  expect((await kept.digests()).map(({ name: called }) => called)).toEqual(['Quarry finds']);
});

it('keeps a photo with its thumbnail', async () => {
  const kept = await open();
  const blob = (text: string) => new Blob([text], { type: 'image/jpeg' });
  await kept.add([], [{ key: 'ab12', photo: blob('photo'), thumbnail: blob('thumb') }]);
  expect(await kept.photoKeys()).toEqual(['ab12']);
  const found = await kept.photo('ab12');
  expect([await found?.photo.text(), await found?.thumbnail.text()]).toEqual(['photo', 'thumb']);
  await kept.add([], [{ key: 'ab12', photo: blob('another'), thumbnail: blob('another') }]);
  expect(await (await kept.photo('ab12'))?.photo.text()).toBe('photo');
  expect(await kept.photo('none')).toBeNull();
});

const pictures = Array.from({ length: 40 }, (_, i) => ({
  key: i.toString(16).padStart(64, '0'),
  photo: new Blob(['photo']),
  thumbnail: new Blob(['thumb']),
}));

it('adds nothing at all when it is called off, wherever that is', async () => {
  const kept = await open();
  await kept.add([batch('01A', 'a')]);
  const [all, digests] = [await kept.all(), await kept.digests()];
  const records = recordsOf(inventedBatch(weeksInCoarse(Array.from({ length: 60 }, () => [{ pits: 1 }]))));
  for (const cancelAt of [0, 0.1, 0.3, 0.5, 0.7, 0.95]) {
    const controller = new AbortController();
    const onProgress = (share: number) => share > cancelAt && controller.abort();
    const adding = kept.add(records, pictures, { signal: controller.signal, onProgress });
    await expect(adding).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }));
    expect(await kept.all()).toEqual(all);
    expect(await kept.digests()).toEqual(digests);
    expect(await kept.photoKeys()).toEqual([]);
  }
  await kept.add(records, pictures);
  expect(await kept.all()).toEqual(mergeRecords(all, records));
  expect(await kept.photoKeys()).toHaveLength(40);
});

it('tells how far it is, and stops reading when it is called off', async () => {
  const kept = await open();
  const records = inventedBatch(weeksInCoarse(Array.from({ length: 200 }, () => [{ pits: 1 }])));
  const told: number[] = [];
  await kept.add(recordsOf(records), pictures, { onProgress: (share) => told.push(share) });
  expect(told).toEqual(told.toSorted((a, b) => a - b));
  expect(told.at(-1)).toBe(1);
  expect(told.length).toBeGreaterThan(15);
  for (const read of [kept.all, (watch: object) => kept.batch(records.batch.id, watch)]) {
    const shares: number[] = [];
    const controller = new AbortController();
    const onProgress = (share: number) => {
      shares.push(share);
      if (share > 0.4) controller.abort();
    };
    await expect(read({ signal: controller.signal, onProgress })).rejects.toThrow(
      expect.objectContaining({ name: 'AbortError' }),
    );
    expect(shares.length).toBeGreaterThan(1);
    expect(shares.at(-1)).toBeLessThan(0.9);
  }
  expect(await kept.batch(records.batch.id)).toEqual(records);
});
