import { useMemo } from 'react';
import type { StoneHistory } from '../../history/batchHistory';
import { beforeAfterCard } from '../../picture/beforeAfterCard';
import { useJournal } from '../stores';
import { useSpeech } from '../useSpeech';
import { cardOf } from './cardOf';
import { SaveKeepsake } from './SaveKeepsake';

/** Saves a stone at its first and last check as one picture; nothing with fewer than two checks. */
export function SaveBeforeAfter({ history }: { history: StoneHistory }) {
  const spoken = useSpeech();
  const batches = useJournal((state) => state.batches);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the card is written in the language spoken
  const found = useMemo(
    () => cardOf(history, batches.find(({ batch }) => batch === history.stone.batch) ?? null),
    [history, batches, spoken],
  );
  if (found === null) return null;
  const { card, faces } = found;
  const { name } = history.stone;
  return (
    <SaveKeepsake
      word={spoken.texts.keepsake.saveCard}
      name={`${/^\d+$/.test(name) ? `Stone ${name}` : name} before and after`}
      picture={() => ({ keepsake: beforeAfterCard(card), faces })}
    />
  );
}
