import { afterEach, expect, it } from 'vitest';
import type { BundleError } from '../../src/bundle/bundleError';
import { type Journal, openJournal } from '../../src/journal/openJournal';
import type { BatchRecord, JournalRecord } from '../../src/journal/records';
import { takeInBundle } from '../../src/state/journalExchange';
import { troubleOf, troubleWords } from '../../src/state/journalTrouble';
import { german } from '../../src/texts/german/german';
import { speak, speech } from '../../src/texts/speech';
import { CHECKS, KEPT, OWN, WHOLE } from '../helpers/hostileBatch';
import { BOMBS } from '../helpers/hostileBombs';
import { idOf, journalOf, withJournal } from '../helpers/hostileCase';
import { CONTAINERS } from '../helpers/hostileContainers';
import { JOURNALS } from '../helpers/hostileJournals';
import { NAMES } from '../helpers/hostileNames';
import { PICTURES } from '../helpers/hostilePictures';
import { REFERENCES } from '../helpers/hostileReferences';
import { VALUES } from '../helpers/hostileValues';
import { TEXTS } from '../helpers/hostileWords';

/** Longer than any takes on a busy computer: what hangs is found, what is slow is shown by benchmarks. */
const MOST_MS = 60_000;
const KEPT_KEY = 'cd'.repeat(32);
const english = speech();
let journal: Journal | null = null;
afterEach(() => {
  journal?.close();
  speak(english);
});

/** A journal with a batch, its checks and a photo, in the browser's real IndexedDB. */
async function filled(records: readonly JournalRecord[] = []): Promise<Journal> {
  journal = await openJournal(`hostile ${Math.random()}`);
  const picture = (text: string) => new Blob([text], { type: 'image/jpeg' });
  await journal.add(
    [...KEPT, ...records],
    [{ key: KEPT_KEY, photo: picture('photo'), thumbnail: picture('small') }],
  );
  return journal;
}

async function contentOf(kept: Journal) {
  const photo = await kept.photo(KEPT_KEY);
  return {
    ...{ records: await kept.all(), digests: await kept.digests(), keys: await kept.photoKeys() },
    photo: [await photo?.photo.text(), await photo?.thumbnail.text()],
  };
}

const CASES = [NAMES, BOMBS, CONTAINERS, JOURNALS, VALUES, PICTURES, TEXTS, REFERENCES]
  .flat()
  .filter(({ isLarge }) => isLarge !== true)
  .map((one) => [one.what, one.refused ?? 'taken in', one] as const);

it.each(CASES)('leaves a real journal as it was by %s: %s', async (_, __, { files, refused }) => {
  const kept = await filled();
  const before = await contentOf(kept);
  const [file] = files();
  const began = performance.now();
  const outcome = await takeInBundle(kept, file!).catch((error: BundleError) => error);
  expect(performance.now() - began).toBeLessThan(MOST_MS);
  const after = await contentOf(kept);
  if (refused !== null) {
    expect(outcome).toMatchObject({ name: 'BundleError', code: refused });
    expect(after).toEqual(before);
    return;
  }
  expect(outcome).not.toBeInstanceOf(Error);
  const now = new Map(after.records.map((record) => [record.id, record]));
  for (const record of before.records) expect(now.get(record.id)).toEqual(record);
  expect(after.keys).toEqual(expect.arrayContaining(before.keys));
  expect(after.photo).toEqual(before.photo);
  // Whatever it brought can be read, and said to another device.
  for (const { batch } of after.digests) expect(await kept.batch(batch)).not.toBeNull();
});

it('refuses whole, in both languages, a bundle whose record is not what is kept under its id', async () => {
  const kept = await filled(WHOLE);
  const before = await contentOf(kept);
  const own = WHOLE[0] as BatchRecord;
  const { look: _, ...without } = CHECKS[0]!.stones[0]!;
  for (const altered of [
    { ...own, name: '' },
    { ...own, name: 'zzz' },
    { ...own, isOver: true },
    { ...own, corrects: OWN },
    { ...CHECKS[0]!, stones: [{ ...without, look: null }] },
    { kind: 'machine', id: OWN, name: '', type: 'rotary', capacityKg: null },
  ]) {
    const fresh = { ...own, id: idOf(1), name: 'fresh' };
    const file = withJournal(journalOf([fresh, altered, { ...fresh, id: '02ZZZZZZZZZZZZZZZZZZZZZZZZ' }]));
    const error: unknown = await takeInBundle(kept, file).catch((reason: unknown) => reason);
    expect(error).toMatchObject({ name: 'BundleError', code: 'differing-from-kept' });
    expect(troubleWords(troubleOf(error))).toContain(`nothing was taken in: export the journal again`);
    speak({ language: 'de', texts: german });
    expect(troubleWords(troubleOf(error))).toContain('nichts wurde übernommen');
    speak(english);
    expect(await contentOf(kept)).toEqual(before);
  }
});

const nameOf = async (kept: Journal) => (await kept.digests()).find(({ batch }) => batch === OWN)?.name;

it('lets the owner say something newer than a record from a clock that goes ahead', async () => {
  const kept = await filled(WHOLE);
  const ahead = {
    ...(WHOLE[0] as BatchRecord),
    id: '02ZZZZZZZZZZZZZZZZZZZZZZZZ',
    corrects: OWN,
    name: 'ahead',
  };
  await takeInBundle(kept, withJournal(journalOf([ahead])));
  expect(await nameOf(kept)).toBe('ahead');
  const { recordId } = await import('../../src/journal/recordId');
  await kept.add([{ ...ahead, id: recordId(), name: 'mine' }]);
  expect(await nameOf(kept)).toBe('mine');
});
