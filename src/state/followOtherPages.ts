import type { StoreApi } from 'zustand/vanilla';
import type { JournalState } from './journalStore';

/**
 * Tells the other pages of this browser when something was added to the journal, and reads it again when they do: two
 * windows never show two states of one journal.
 *
 * @param journal - This page's store.
 * @param name - Of the journal's database.
 * @returns What ends it.
 */
export function followOtherPages(journal: StoreApi<JournalState>, name: string): () => void {
  const channel = new BroadcastChannel(name);
  const stop = journal.subscribe((now, before) => {
    if (now.added !== before.added) channel.postMessage('added');
  });
  channel.onmessage = () => {
    // A journal that cannot be read says so when it is next asked for.
    void journal
      .getState()
      .refresh()
      .catch(() => undefined);
  };
  return () => {
    stop();
    channel.close();
  };
}
