import type { StoreApi } from 'zustand/vanilla';
import type { JournalState } from './journalStore';

/** Fills the journal of the example, unless it is there from an earlier visit. */
export async function openExample(store: StoreApi<JournalState>, address: string): Promise<void> {
  const journal = await store.getState().opened;
  if ((await journal.digests()).length > 0) return;
  const response = await fetch(address);
  if (!response.ok) throw new Error('The example could not be read. Open the page again.');
  await store.getState().takeIn(await response.blob());
}
