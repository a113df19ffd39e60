import { afterEach, expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import type { Journal } from '../../src/journal/openJournal';
import { gradePhoto } from '../../src/state/gradePhoto';
import { createJournalStore } from '../../src/state/journalStore';
import { troubleWords } from '../../src/state/journalTrouble';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';
import { speak } from '../../src/texts/speech';
import { inventedBatch, weeksInCoarse } from '../helpers/inventedBatch';
import { inventedReport } from '../helpers/inventedReport';

const graded = gradePhoto(inventedReport(2), { step: 'coarse', material: null, limits: DEFAULT_LIMITS });
const never = () => Promise.reject(new Error('Not asked for here.'));

afterEach(() => speak({ language: 'en', texts: english }));

/** What a person reads. */
const troubleOf = (store: ReturnType<typeof createJournalStore>) => troubleWords(store.getState().trouble!);

/** A store whose journal is open, but cannot be read any more. */
async function unreadable() {
  const journal = { digests: async () => [], ofKind: async () => [], batch: never, add: never };
  const store = createJournalStore(async () => journal as unknown as Journal, never);
  await expect.poll(() => store.getState().status).toBe('open');
  return store;
}

it('says so when the journal cannot be read for its stones, and goes on', async () => {
  const store = await unreadable();
  expect(await store.getState().propose(graded, '01B', null)).toBeNull();
  expect(troubleOf(store)).toContain('could not be read just now');
  expect(await store.getState().propose(graded, null, null)).toHaveLength(2);
});

it('says so when the storage takes nothing more', async () => {
  const store = await unreadable();
  const machine = { kind: 'machine', name: 'the barrel', type: 'rotary', capacityKg: null } as const;
  expect(await store.getState().say([machine])).toBeNull();
  expect(troubleOf(store)).toContain('nothing kept before is lost');
});

it('keeps nothing that was cancelled, and calls that no trouble', async () => {
  const controller = new AbortController();
  const { signal } = controller;
  const isAbort = expect.objectContaining({ name: 'AbortError' });
  const stages: string[] = [];
  const journal = {
    ...{ digests: async () => [], ofKind: async () => [], batch: async () => null },
    add: async () => void stages.push('added'),
  };
  const store = createJournalStore(
    async () => journal as unknown as Journal,
    async () => {
      stages.push('shrunk');
      controller.abort();
      signal.throwIfAborted();
      return never();
    },
  );
  const setting = { graded, step: 'coarse', material: null, limits: null, day: '2026-03-09' } as const;
  const check = { ...setting, file: new Blob(), batch: { name: 'brook' }, faceOf: null, stones: [] };
  await expect(store.getState().keep(1, check, { signal })).rejects.toThrow(isAbort);
  expect(stages).toEqual(['shrunk']);
  await expect(store.getState().takeIn(new Blob(['no zip']), { signal })).rejects.toThrow(isAbort);
  expect(store.getState()).toMatchObject({ trouble: null, keptAs: {} });
  expect(await store.getState().takeIn(new Blob(['no zip']))).toBeNull();
  expect(troubleOf(store)).toContain('not a journal bundle');
});

it('says so when the browser forbids storage', async () => {
  const store = createJournalStore(never, never);
  await expect.poll(() => store.getState().status).toBe('refused');
  expect(troubleOf(store)).toContain('storage is forbidden');
});

it('says what went wrong in the language that is spoken when it is read', async () => {
  const store = await unreadable();
  await store.getState().propose(graded, '01B', null);
  speak({ language: 'de', texts: german });
  expect(troubleOf(store)).toBe(german.journal.troubles.unreadable);
});

it('works the verdicts of kept photos out again when another language is spoken', async () => {
  const records = inventedBatch(weeksInCoarse([14, 9, 7.4, 7, 7, 7].map((fractureMm) => [{ fractureMm }])));
  const check = records.checks.at(-1)!.id;
  const journal = { digests: async () => [], ofKind: async () => [], batch: async () => records };
  const store = createJournalStore(async () => journal as unknown as Journal, never);
  store.getState().recall({ 1: { batch: records.batch.id, photo: check, check, fresh: [] } });
  const reasons = () => store.getState().minded[1]?.get(1)?.verdict.reasons.join(' ');
  await expect.poll(reasons).toContain('fracture');
  speak({ language: 'de', texts: german });
  await expect.poll(reasons).toMatch(/Riss/);
});
