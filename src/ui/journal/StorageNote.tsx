import { useEffect, useState } from 'react';
import { useJournal } from '../stores';

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
    <section className="storage" aria-label="Storage">
      <p className="fine">
        The journal is kept in this browser, on this device, and nowhere else.
        {room !== null &&
          ` It takes about ${megabytes(room.usedMb)}; there is room for ${megabytes(room.freeMb)} more.`}
        {room !== null &&
          (room.isLasting
            ? ' The browser has promised not to clear it by itself.'
            : ' The browser may clear it when the device runs out of room.')}
      </p>
      {room !== null && !room.isLasting && (
        <button type="button" className="button" onClick={ask}>
          Ask the browser to keep it
        </button>
      )}
    </section>
  );
}

const megabytes = (mb: number) =>
  mb >= 1000 ? `${Math.round(mb / 1000)} GB` : `${mb >= 10 ? Math.round(mb) : mb.toFixed(1)} MB`;
