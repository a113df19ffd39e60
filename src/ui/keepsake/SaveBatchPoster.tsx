import { useMemo } from 'react';
import type { BatchHistory } from '../../history/batchHistory';
import { batchPoster } from '../../picture/batchPoster';
import { useSpeech } from '../useSpeech';
import { posterOf } from './posterOf';
import { SaveKeepsake } from './SaveKeepsake';

/** Saves all stones of a batch as they are now as one picture; nothing before the first check. */
export function SaveBatchPoster({ history }: { history: BatchHistory }) {
  const words = useSpeech().texts.keepsake;
  const found = useMemo(() => posterOf(history), [history]);
  if (found === null) return null;
  const { poster, faces } = found;
  return (
    <SaveKeepsake
      word={words.savePoster}
      name={`${poster.name} poster`}
      picture={() => ({ keepsake: batchPoster(poster), faces })}
    />
  );
}
