import { useMemo } from 'react';
import type { BatchHistory } from '../../history/batchHistory';
import { batchPoster } from '../../picture/batchPoster';
import { posterOf } from './posterOf';
import { SaveKeepsake } from './SaveKeepsake';

/** Saves all stones of a batch as they are now as one picture; nothing before the first check. */
export function SaveBatchPoster({ history }: { history: BatchHistory }) {
  const found = useMemo(() => posterOf(history), [history]);
  if (found === null) return null;
  const { poster, faces } = found;
  return (
    <SaveKeepsake
      word="Save a poster of this batch"
      name={`${poster.name} poster`}
      picture={() => ({ keepsake: batchPoster(poster), faces })}
    />
  );
}
