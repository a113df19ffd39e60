import { useState } from 'react';
import type { Watch } from '../../progress/watch';
import { texts } from '../../texts/speech';
import { useRun } from '../stores';

/** What a piece of work has to say when it is done. */
export type Said = () => string;

/** What is said last of the work begun here, and how work is begun. */
export function useSaid() {
  const run = useRun();
  // Held as what says it: the language may change while it stands there.
  const [said, setSaid] = useState<Said | null>(null);
  const [busy, setBusy] = useState(false);
  const attempt = async (
    doing: Said,
    work: (watch: Watch) => Promise<Said | null>,
    cancelled: Said = () => texts().work.notSaved,
  ) => {
    setBusy(true);
    setSaid(null);
    try {
      const done = await run(doing, work);
      setSaid(() => (done === undefined ? cancelled : done));
    } catch (error) {
      setSaid(() => () => (error instanceof Error ? error.message : String(error)));
    }
    setBusy(false);
  };
  return { said, busy, attempt };
}
