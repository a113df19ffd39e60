import { Dexie } from 'dexie';
import { afterEach, expect, it } from 'vitest';
import { type Journal, type KeptPhoto, openJournal } from '../../src/journal/openJournal';
import { createJournalStore } from '../../src/state/journalStore';
import { batchRecord as batch } from '../helpers/batchRecord';
import { inventedBatch, recordsOf, weeksInCoarse } from '../helpers/inventedBatch';
import { SECOND_VERSION } from '../helpers/secondVersion';

const open: Journal[] = [];
afterEach(() => {
  for (const journal of open.splice(0)) journal.close();
});

/** A journal with its safety copy, in the browser's real database and cache. */
async function opened(name: string): Promise<Journal> {
  const journal = await openJournal(name, `${name} copy`);
  open.push(journal);
  return journal;
}
const nameOf = () => `copied ${Math.random()}`;
const picture = (text: string) => new Blob([text], { type: 'image/jpeg' });
const photo = (letter: string): KeptPhoto => ({
  key: letter.repeat(64),
  photo: picture(`photo ${letter}`),
  thumbnail: picture(`small ${letter}`),
});
const RECORDS = recordsOf(
  inventedBatch(
    weeksInCoarse([
      [{}, {}],
      [{ pits: 2 }, {}],
    ]),
  ),
);

async function contents(journal: Journal) {
  const keys = await journal.photoKeys();
  const texts = keys.map(async (key) => {
    const kept = await journal.photo(key);
    return [await kept?.photo.text(), kept?.photo.type, await kept?.thumbnail.text()];
  });
  return { records: await journal.all(), digests: await journal.digests(), photos: await Promise.all(texts) };
}

it('brings all of a journal back whose database is gone', async () => {
  const name = nameOf();
  const first = await opened(name);
  await first.add(RECORDS, [photo('a')]);
  await first.add([batch('01Z', 'another')], [photo('b')]);
  const before = await contents(first);
  first.close();
  await Dexie.delete(name);
  const again = await opened(name);
  expect(await again.whole).toBe(RECORDS.length + 1);
  expect(await contents(again)).toEqual(before);
  const third = await opened(name);
  expect(await third.whole).toBe(0);
});

it('brings back what the database lost of it, and leaves the rest as it is', async () => {
  const name = nameOf();
  const first = await opened(name);
  await first.add([batch('01X', 'first')], [photo('a')]);
  await first.add(RECORDS, [photo('b')]);
  const before = await contents(first);
  first.close();
  const broken = await new Dexie(name).open();
  const { id } = (await broken.table('additions').toCollection().last()) as { id: string };
  await broken.table('additions').delete(id);
  await broken.table('records').bulkDelete(RECORDS.map((one) => one.id));
  await broken.table('photos').delete('b'.repeat(64));
  await broken.table('digests').clear();
  broken.close();
  const again = await opened(name);
  expect(await again.whole).toBe(RECORDS.length);
  expect(await again.all()).toEqual(before.records);
  expect((await contents(again)).photos).toEqual(before.photos);
});

it('takes an addition of many pieces back whole or not at all', async () => {
  const name = nameOf();
  const first = await opened(name);
  const many = Array.from({ length: 300 }, (_, i) => batch(`01M${String(i).padStart(4, '0')}`, `batch ${i}`));
  await first.add(many);
  const pieces = await caches.open(`${name} copy: additions`);
  await expect.poll(async () => (await pieces.keys()).length).toBe(3);
  first.close();
  await Dexie.delete(name);
  const [one] = await pieces.keys();
  const held = await pieces.match(one!);
  await pieces.delete(one!);
  const without = await opened(name);
  expect(await without.whole).toBe(0);
  expect(await without.all()).toEqual([]);
  without.close();
  await pieces.put(one!, held!);
  const again = await opened(name);
  expect(await again.whole).toBe(300);
  expect(await again.all()).toEqual(many);
});

it('copies later what was not copied at once, also of a journal from before there was a copy', async () => {
  const name = nameOf();
  const old = new Dexie(name);
  old.version(2).stores({ records: '&id, kind, [batch+kind+id]', photos: '&key', digests: '&batch' });
  await old.open();
  await old.table('records').bulkAdd([...SECOND_VERSION]);
  await old.table('photos').add(photo('c'));
  old.close();
  const first = await opened(name);
  expect(await first.whole).toBe(0);
  const before = await contents(first);
  expect(before.records.length).toBe(SECOND_VERSION.length);
  first.close();
  await Dexie.delete(name);
  const again = await opened(name);
  expect(await again.whole).toBe(before.records.length);
  expect(await again.all()).toEqual(before.records);
  expect((await contents(again)).photos).toEqual(before.photos);
});

it('says how much came back, in lists that are up to date', async () => {
  const name = nameOf();
  const first = await opened(name);
  await first.add(RECORDS);
  first.close();
  await Dexie.delete(name);
  const store = createJournalStore(
    () => opened(name),
    () => Promise.reject(new Error('Not asked for here.')),
  );
  await expect.poll(() => store.getState().restored).toBe(RECORDS.length);
  expect(store.getState().batches).toHaveLength(1);
});
