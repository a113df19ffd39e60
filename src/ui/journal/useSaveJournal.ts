import { dayToday } from '../../state/dayToday';
import { bundleOf } from '../../state/journalExchange';
import { texts } from '../../texts/speech';
import { saveFile } from '../parts/saveFile';
import { useIsExample, useJournal, useSettings } from '../stores';
import type { useSaid } from './useSaid';

/** Of a file that is saved today. */
export const nameOfFile = (ending: string) => `glintgrade-${dayToday()}.${ending}`;

/** Saves the whole journal as a file, and remembers how far it went. */
export function useSaveJournal(attempt: ReturnType<typeof useSaid>['attempt']): () => Promise<void> {
  const opened = useJournal((state) => state.opened);
  const change = useSettings((state) => state.change);
  const isExample = useIsExample();
  return () =>
    attempt(
      () => texts().work.savingJournal,
      async (watch) => {
        const journal = await opened;
        const newest = (await journal.recordIds()).at(-1) ?? null;
        saveFile(await bundleOf(journal, watch), nameOfFile('zip'));
        if (!isExample) change({ savedUpTo: newest });
        return () => texts().journal.inAndOut.saved;
      },
    );
}
