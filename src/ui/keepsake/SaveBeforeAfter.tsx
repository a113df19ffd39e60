import { useMemo } from 'react';
import type { StoneHistory } from '../../history/batchHistory';
import { beforeAfterCard } from '../../picture/beforeAfterCard';
import { useJournal } from '../stores';
import { cardOf } from './cardOf';
import { SaveKeepsake } from './SaveKeepsake';

/** Saves a stone at its first and last check as one picture; nothing with fewer than two checks. */
export function SaveBeforeAfter({ history }: { history: StoneHistory }) {
  const batches = useJournal((state) => state.batches);
  const found = useMemo(
    () => cardOf(history, batches.find(({ batch }) => batch === history.stone.batch) ?? null),
    [history, batches],
  );
  if (found === null) return null;
  const { card, faces } = found;
  return (
    <SaveKeepsake
      word="Save before and after as a picture"
      name={`${card.title} before and after`}
      picture={() => ({ keepsake: beforeAfterCard(card), faces })}
    />
  );
}
