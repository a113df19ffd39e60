import { afterEach, expect, it } from 'vitest';
import { mergeRecords } from '../../src/journal/mergeRecords';
import { type Journal, openJournal } from '../../src/journal/openJournal';
import type { CheckRecord, IdentityRecord } from '../../src/journal/records';
import { batchRecord as batch } from '../helpers/batchRecord';

let journal: Journal | null = null;
let number = 0;

/** A journal of its own for each test, in the browser's real IndexedDB. */
async function open(name = `test journal ${++number} ${Math.random()}`): Promise<Journal> {
  journal = await openJournal(name);
  return journal;
}

afterEach(() => journal?.close());

const check = (id: string, of: string): CheckRecord => ({
  kind: 'check',
  id,
  batch: of,
  step: 'coarse',
  day: '2026-03-09',
  mmPerPx: 0.12,
  photo: null,
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
  await kept.add([changed]);
  expect(await kept.all()).toEqual(mergeRecords([one], [changed]));
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

it('finds the records of a batch and of a check', async () => {
  const kept = await open();
  const identity: IdentityRecord = { kind: 'identity', id: '01G', check: '01D', place: 3, stone: '01S' };
  await kept.add([batch('01A', 'a'), batch('01B', 'b'), identity]);
  await kept.add([check('01E', '01A'), check('01D', '01A'), check('01F', '01B')]);
  expect((await kept.ofKind('batch')).map(({ id }) => id)).toEqual(['01A', '01B']);
  expect((await kept.ofBatch('check', '01A')).map(({ id }) => id)).toEqual(['01D', '01E']);
  expect((await kept.lastOfBatch('check', '01A'))?.id).toBe('01E');
  expect(await kept.lastOfBatch('run', '01A')).toBeNull();
  expect(await kept.countOfBatch('check', '01A')).toBe(2);
  expect(await kept.ofCheck('identity', '01D')).toEqual([identity]);
});

it('keeps a photo with its thumbnail', async () => {
  const kept = await open();
  const blob = (text: string) => new Blob([text], { type: 'image/jpeg' });
  await kept.keepPhoto({ key: 'ab12', photo: blob('photo'), thumbnail: blob('thumb') });
  const found = await kept.photo('ab12');
  expect([await found?.photo.text(), await found?.thumbnail.text()]).toEqual(['photo', 'thumb']);
  expect(await kept.photo('none')).toBeNull();
});
