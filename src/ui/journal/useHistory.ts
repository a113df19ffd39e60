import { useEffect, useState } from 'react';
import type { BatchHistory } from '../../history/batchHistory';
import type { RecordId } from '../../journal/records';
import { useJournal } from '../stores';

/**
 * A batch with its checks and stones, read again whenever something is added; undefined while it is read, null when there
 * is none. Reading stops when it is not shown any more.
 *
 * @param onProgress - Is told how much is read the first time, 0 to 1.
 */
export function useHistory(
  batch: RecordId | null,
  onProgress?: (share: number) => void,
): BatchHistory | null | undefined {
  const historyOf = useJournal((state) => state.historyOf);
  const edition = useJournal((state) => state.edition);
  const [found, setFound] = useState<BatchHistory | null | undefined>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new edition is a reason to read it again
  useEffect(() => {
    let isStale = false;
    const leaving = new AbortController();
    const isFirst = found === undefined;
    const watch = { signal: leaving.signal, ...(isFirst && onProgress ? { onProgress } : {}) };
    const read = batch === null ? Promise.resolve(null) : historyOf(batch, watch);
    read.then(
      (history) => !isStale && setFound(history),
      () => !isStale && setFound(null),
    );
    return () => {
      isStale = true;
      leaving.abort();
    };
  }, [batch, edition, historyOf]);
  return found;
}
