import type { StoreApi } from 'zustand/vanilla';
import { partOf, tellerOf, type Watch } from '../progress/watch';
import { texts } from '../texts/speech';
import type { JournalState } from './journalStore';

/** Share of the time after which the file is here. */
const FETCHED = 0.4;

/**
 * Fills the journal of the example, unless it is there from an earlier visit. Its two megabytes take several seconds over
 * a slow network.
 *
 * @throws The reason for which it was called off; then the journal stays empty.
 */
export async function openExample(
  store: StoreApi<JournalState>,
  address: string,
  watch: Watch = {},
): Promise<void> {
  const journal = await store.getState().opened;
  if ((await journal.digests()).length > 0) return;
  const file = await fetched(address, partOf(watch, 0, FETCHED));
  await store.getState().takeIn(file, partOf(watch, FETCHED, 1));
}

/** A file of this site, piece by piece. */
async function fetched(address: string, watch: Watch): Promise<Blob> {
  const tell = tellerOf(watch);
  const response = await fetch(address, watch.signal ? { signal: watch.signal } : {});
  if (!response.ok || response.body === null) throw new Error(texts().journal.example.unreadable);
  const total = Number(response.headers.get('content-length'));
  const pieces: Uint8Array<ArrayBuffer>[] = [];
  let bytes = 0;
  const reader = response.body.getReader();
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    pieces.push(read.value);
    bytes += read.value.length;
    if (total > 0) tell(bytes / total);
  }
  return new Blob(pieces);
}
