import { useEffect, useState } from 'react';
import { type AtStake, atStake } from '../../state/atStake';
import { useIsExample, useJournal, useSettings } from '../stores';

/** How much lies in this browser alone; null while that is looked up, and in the example. */
export function useAtStake(): AtStake | null {
  const { opened, edition } = useJournal((state) => state);
  const savedUpTo = useSettings((state) => state.savedUpTo);
  const isExample = useIsExample();
  const [found, setFound] = useState<AtStake | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was added is at stake too
  useEffect(() => {
    let isStale = false;
    const look = async () => {
      const isLasting = (await navigator.storage?.persisted?.()) ?? false;
      const ids = await (await opened).checkIds();
      if (!isStale) setFound(atStake(ids, savedUpTo, isLasting, Date.now()));
    };
    // Without a journal nothing is at stake.
    if (!isExample) look().catch(() => undefined);
    return () => {
      isStale = true;
    };
  }, [opened, edition, savedUpTo, isExample]);
  return found;
}
