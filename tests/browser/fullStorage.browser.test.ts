import { Dexie } from 'dexie';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { cdp } from 'vitest/browser';
import { readBundle } from '../../src/bundle/readBundle';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { type Journal, type KeptPhoto, openJournal } from '../../src/journal/openJournal';
import { openVisit, type Visit } from '../../src/journal/openVisit';
import type { CheckRecord } from '../../src/journal/records';
import { gradePhoto } from '../../src/state/gradePhoto';
import { bundleOf } from '../../src/state/journalExchange';
import { createJournalStore, type JournalState } from '../../src/state/journalStore';
import { inventedReport } from '../helpers/inventedReport';

const graded = gradePhoto(inventedReport(2), { step: 'coarse', material: null, limits: DEFAULT_LIMITS });
const about = { step: 'coarse', material: null, limits: null, day: '2026-03-09', faceOf: null } as const;
const stones = [1, 2].map((place) => ({ place, stone: null, confidence: null }));
let number = 0;

/** A photo like no other. */
async function shrink(): Promise<KeptPhoto> {
  const canvas = new OffscreenCanvas(128, 96);
  const noise = crypto.getRandomValues(new Uint8ClampedArray(4 * canvas.width * canvas.height));
  canvas.getContext('2d')!.putImageData(new ImageData(noise, canvas.width), 0, 0);
  const photo = await canvas.convertToBlob({ type: 'image/jpeg' });
  return { key: String(++number).padStart(64, '0'), photo, thumbnail: photo };
}

const check = (name: string) => ({ ...about, stones, file: new Blob(), graded, batch: { name } });
const machine = { kind: 'machine', name: 'the barrel', type: 'rotary', capacityKg: null } as const;

/** No write fits any more; without a number, the browser's own limit again. */
const leaveRoom = (bytes?: number) =>
  cdp().send('Storage.overrideQuotaForOrigin', {
    origin: location.origin,
    ...(bytes === undefined ? {} : { quotaSize: bytes }),
  });

let journal: Journal;
let other: Blob;
let visit: Visit<string, null>;
const entry = (key: string) => ({ key, photo: key, keptAs: null, day: '2026-03-09', madeBy: 'this' });
const store = createJournalStore(() => openJournal(`full ${Math.random()}`), shrink);
const state = () => store.getState();
const contents = async () => ({
  records: await journal.all(),
  digests: await journal.digests(),
  photos: await journal.photoKeys(),
});

beforeAll(async () => {
  journal = await state().opened;
  await state().keep(1, check('Brook pebbles'));
  const elsewhere = createJournalStore(() => openJournal(`elsewhere ${Math.random()}`), shrink);
  await elsewhere.getState().keep(1, check('Shore pebbles'));
  other = await bundleOf(await elsewhere.getState().opened);
  visit = await openVisit<string, null>(`visit ${Math.random()}`);
  await visit.put(entry('1'));
  await leaveRoom(1);
  await untilFull();
}, 120_000);
afterAll(async () => {
  await leaveRoom();
  journal.close();
});

/** The browser looks how much room is left only now and then: in between it takes what fitted when it looked. */
async function untilFull(): Promise<void> {
  const probe = new Dexie(`probe ${Math.random()}`);
  probe.version(1).stores({ one: '&id' });
  while (
    await probe
      .table('one')
      .put({ id: 'probe' })
      .then(
        () => true,
        () => false,
      )
  )
    await new Promise((resolve) => setTimeout(resolve, 500));
}

const firstCheck = async () => (await journal.ofKind('check'))[0] as CheckRecord;
const WRITES: readonly (readonly [string, (journal: JournalState) => Promise<unknown>])[] = [
  ['keeping a check', ({ keep }) => keep(2, check('Another batch'))],
  [
    'keeping another side of one',
    async ({ keep }) => {
      const { batch, id } = await firstCheck();
      return keep(3, { ...check(''), batch: { id: batch }, faceOf: id });
    },
  ],
  ['naming its stones', async ({ name }) => name(await firstCheck(), stones)],
  ['adding a machine', ({ say }) => say([machine])],
  [
    'starting a batch',
    ({ begin }) =>
      begin({ name: 'New', materials: [], source: '', machine: null, day: '2026-03-09', run: null }),
  ],
  [
    'taking a batch out',
    async ({ withdraw }) => withdraw((await firstCheck()).batch, [(await firstCheck()).batch], true),
  ],
  ['taking in a journal', ({ takeIn }) => takeIn(other)],
];

it.each(WRITES)('%s: nothing fits, which is said, and nothing is lost', async (_, write) => {
  const before = await contents();
  expect((await write(state())) || null).toBeNull();
  expect(state().trouble).toBe('full');
  expect(await contents()).toEqual(before);
});

it('remembers no other photo at hand, and forgets none', async () => {
  await expect(visit.put(entry('2'))).rejects.toThrow();
  expect(await visit.all()).toEqual([entry('1')]);
});

it('lets the journal be carried out of a full browser', async () => {
  const { records, photos } = await contents();
  const saved = await readBundle(await bundleOf(journal));
  expect(saved.records).toEqual(records);
  expect(saved.photos.map(({ key }) => key)).toEqual(photos);
});

it('does all of it once there is room', async () => {
  await leaveRoom();
  for (const [, write] of WRITES) {
    const before = (await journal.recordIds()).length;
    expect(await write(state())).toBeTruthy();
    expect(state().trouble).toBeNull();
    expect((await journal.recordIds()).length).toBeGreaterThan(before);
  }
});
