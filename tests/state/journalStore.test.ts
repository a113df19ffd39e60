import { expect, it } from 'vitest';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import type { Journal } from '../../src/journal/openJournal';
import { gradePhoto } from '../../src/state/gradePhoto';
import { createJournalStore } from '../../src/state/journalStore';
import { inventedReport } from '../helpers/inventedReport';

const graded = gradePhoto(inventedReport(2), { step: 'coarse', material: null, limits: DEFAULT_LIMITS });
const never = () => Promise.reject(new Error('Not asked for here.'));

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
  expect(store.getState().trouble).toContain('could not be read just now');
  expect(await store.getState().propose(graded, null, null)).toHaveLength(2);
});

it('says so when the storage takes nothing more', async () => {
  const store = await unreadable();
  const machine = { kind: 'machine', name: 'the barrel', type: 'rotary', capacityKg: null } as const;
  expect(await store.getState().say([machine])).toBe(false);
  expect(store.getState().trouble).toContain('nothing kept before is lost');
});

it('says so when the browser forbids storage', async () => {
  const store = createJournalStore(never, never);
  await expect.poll(() => store.getState().status).toBe('refused');
  expect(store.getState().trouble).toContain('storage is forbidden');
});
