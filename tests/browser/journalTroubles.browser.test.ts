import { Dexie } from 'dexie';
import { afterEach, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { type Journal, openJournal } from '../../src/journal/openJournal';
import { gradePhoto } from '../../src/state/gradePhoto';
import { createJournalStore } from '../../src/state/journalStore';
import { troubleWords } from '../../src/state/journalTrouble';
import { journal as words } from '../../src/texts/english/journal';
import { journal as worte } from '../../src/texts/german/journal';
import { inventedReport } from '../helpers/inventedReport';

const graded = gradePhoto(inventedReport(2), { step: 'coarse', material: null, limits: DEFAULT_LIMITS });
const noPhoto = () => Promise.reject(new Error('Not asked for here.'));
const machine = { kind: 'machine', name: 'the barrel', type: 'rotary', capacityKg: null } as const;
let journal: Journal | null = null;
let number = 0;

const nameOf = () => `troubles ${++number} ${Math.random()}`;

/** A store whose journal lies in the browser's real IndexedDB. */
async function opened(name = nameOf()) {
  const store = createJournalStore(() => openJournal(name), noPhoto);
  journal = await store.getState().opened;
  await expect.poll(() => store.getState().status).toBe('open');
  return store;
}

afterEach(() => journal?.close());

it('outdated: another page has brought the journal up to date', async () => {
  const name = nameOf();
  const store = await opened(name);
  const newer = new Dexie(name);
  newer.version(99).stores({ records: '&id' });
  await newer.open();
  expect(await store.getState().say([machine])).toBeNull();
  expect(store.getState().trouble).toBe('outdated');
  newer.close();
});

it('unreadable: the journal is closed while it is read', async () => {
  const store = await opened();
  journal!.close();
  expect(await store.getState().propose(graded, '01ARZ3NDEKTSV4RRFFQ69G5FAV', null)).toBeNull();
  expect(store.getState().trouble).toBe('unreadable');
});

it('outdated: a newer edition has brought the journal up to date before it is opened', async () => {
  const name = nameOf();
  const newer = new Dexie(name);
  newer.version(99).stores({ records: '&id', mine: '&id' });
  await newer.open();
  newer.close();
  const store = createJournalStore(() => openJournal(name), noPhoto);
  await expect.poll(() => store.getState().status).toBe('refused');
  expect(store.getState().trouble).toBe('outdated');
  expect(await store.getState().say([machine])).toBeNull();
  expect(store.getState().trouble).toBe('outdated');
  await newer.open();
  expect(await newer.table('records').count()).toBe(0);
  newer.close();
});

it('refused: the browser does not open the journal', async () => {
  const open = indexedDB.open;
  // A private window that forbids storage cannot be had in a test: the browser's answer is given instead.
  indexedDB.open = () => {
    throw new DOMException('Storage is forbidden.', 'SecurityError');
  };
  try {
    const store = createJournalStore(() => openJournal(nameOf()), noPhoto);
    await expect.poll(() => store.getState().status).toBe('refused');
    expect(store.getState().trouble).toBe('refused');
  } finally {
    indexedDB.open = open;
  }
});

it('says each in both languages', () => {
  for (const code of ['full', 'outdated', 'unreadable', 'refused'] as const) {
    expect(troubleWords(code)).toBe(words.troubles[code]);
    expect(worte.troubles[code]).toMatch(/^\p{Lu}.{20,}\.$/u);
  }
});
