import { useEffect, useState } from 'react';
import type { AtStake } from '../../state/atStake';
import { dayToday } from '../../state/dayToday';
import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';
import { useJournal } from '../stores';
import { useAtStake } from './useAtStake';

interface Room {
  readonly usedMb: number;
  readonly freeMb: number;
  readonly isLasting: boolean;
}

async function roomLeft(): Promise<Room | null> {
  const storage = navigator.storage as StorageManager | undefined;
  if (!storage?.estimate) return null;
  const { usage = 0, quota = 0 } = await storage.estimate();
  const isLasting = (await storage.persisted?.()) ?? false;
  return { usedMb: usage / 1e6, freeMb: Math.max(0, quota - usage) / 1e6, isLasting };
}

/** How much room the journal takes, and whether the browser may clear it away. */
export function StorageNote() {
  const edition = useJournal((state) => state.edition);
  const words = texts().journal.storage;
  const stake = useAtStake();
  const [room, setRoom] = useState<Room | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was added changes the room left
  useEffect(() => {
    let isStale = false;
    roomLeft().then((found) => !isStale && setRoom(found));
    return () => {
      isStale = true;
    };
  }, [edition]);
  const ask = async () => {
    await navigator.storage.persist();
    setRoom(await roomLeft());
  };
  return (
    <section className="storage" aria-label={words.title}>
      <p className="fine">
        {[
          words.where,
          ...(room === null
            ? []
            : [
                words.room(megabytes(room.usedMb), megabytes(room.freeMb)),
                room.isLasting ? words.lasting : words.passing,
              ]),
          ...(stake === null ? [] : [stakeWords(stake)]),
        ].join(' ')}
      </p>
      {room !== null && !room.isLasting && (
        <button type="button" className="button" onClick={ask}>
          {words.ask}
        </button>
      )}
      <details className="said-more">
        <summary>{words.clearing.title}</summary>
        <p>{words.clearing.text}</p>
      </details>
    </section>
  );
}

/** Once much is at stake, a note of its own says so. */
function stakeWords({ level, photos, sinceMs }: AtStake): string {
  const words = texts().journal.stake;
  if (sinceMs === null) return words.nothing;
  return level === 'little' ? words.little(photos, dayToday(new Date(sinceMs))) : '';
}

const megabytes = (mb: number) =>
  mb >= 1000
    ? `${Math.round(mb / 1000)} GB`
    : `${mb >= 10 ? Math.round(mb) : withDecimalMark(mb.toFixed(1))} MB`;
