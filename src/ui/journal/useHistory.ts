import { useEffect, useState } from 'react';
import type { BatchHistory } from '../../history/batchHistory';
import type { RecordId } from '../../journal/records';
import { useJournal } from '../stores';

/** A batch with its checks and stones, read again whenever something is added; undefined while it is read, null when there is none. */
export function useHistory(batch: RecordId | null): BatchHistory | null | undefined {
  const historyOf = useJournal((state) => state.historyOf);
  const edition = useJournal((state) => state.edition);
  const [found, setFound] = useState<BatchHistory | null | undefined>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new edition is a reason to read it again
  useEffect(() => {
    let isStale = false;
    const read = batch === null ? Promise.resolve(null) : historyOf(batch);
    read.then(
      (history) => !isStale && setFound(history),
      () => !isStale && setFound(null),
    );
    return () => {
      isStale = true;
    };
  }, [batch, edition, historyOf]);
  return found;
}
