import type { StoreApi } from 'zustand/vanilla';
import type { Visit, VisitEntry } from '../journal/openVisit';
import { recordId } from '../journal/recordId';
import { dayToday } from './dayToday';
import type { JournalState } from './journalStore';
import type { KeptAs } from './keepCheck';
import type { PhotoState } from './photoStore';
import type { TrayPhoto } from './trayPhoto';

export type PhotoVisit = Visit<TrayPhoto, KeptAs>;
type Entry = VisitEntry<TrayPhoto, KeptAs>;

interface Stores {
  readonly photos: StoreApi<PhotoState>;
  readonly journal: StoreApi<JournalState>;
}

/**
 * Brings back the photos at hand before the page was closed, and from then on remembers each change of them.
 *
 * Photos that the journal holds go after the day on which they were kept; the others stay until the owner takes
 * them away. What another edition of the program measured is measured anew.
 *
 * @param madeBy - Edition of the program.
 * @returns How many photos came back; 0 also where the storage cannot be read, and then nothing is remembered.
 */
export async function keepVisit(
  { photos, journal }: Stores,
  open: () => Promise<PhotoVisit>,
  madeBy: string,
): Promise<number> {
  const visit = await open().catch(() => null);
  const found = (await visit?.all().catch(() => null)) ?? null;
  if (visit === null || found === null) return 0;
  const stale = found.filter(({ keptAs, day }) => keptAs !== null && day !== dayToday());
  for (const { key } of stale) void visit.drop(key).catch(() => undefined);
  const fresh = found.filter((entry) => !stale.includes(entry));
  const keys = bringBack({ photos, journal }, fresh, madeBy);
  rememberChanges({ photos, journal }, visit, keys, madeBy);
  return fresh.length;
}

/** Puts entries behind the photos that came meanwhile. @returns Keys by the ids of their photos. */
function bringBack(
  { photos, journal }: Stores,
  entries: readonly Entry[],
  madeBy: string,
): Map<number, string> {
  const last = Math.max(0, ...photos.getState().photos.map(({ id }) => id));
  const keys = new Map<number, string>();
  const keptAs: Record<number, KeptAs> = {};
  const back = entries.map((entry, index): TrayPhoto => {
    const id = last + 1 + index;
    keys.set(id, entry.key);
    if (entry.keptAs !== null) keptAs[id] = entry.keptAs;
    const asItWas = { ...entry.photo, id };
    return entry.madeBy === madeBy ? asItWas : { ...asItWas, status: 'waiting', report: null };
  });
  if (Object.keys(keptAs).length > 0) journal.getState().recall(keptAs);
  photos.getState().restore(back);
  return keys;
}

function rememberChanges(
  { photos, journal }: Stores,
  visit: PhotoVisit,
  keys: Map<number, string>,
  madeBy: string,
): void {
  const write = (photo: TrayPhoto) => {
    const key = keys.get(photo.id) ?? recordId();
    keys.set(photo.id, key);
    const keptAs = journal.getState().keptAs[photo.id] ?? null;
    // A full storage is no reason to stop: the photo is only not remembered.
    void visit.put({ key, photo, keptAs, day: dayToday(), madeBy }).catch(() => undefined);
  };
  const follow = (now: readonly TrayPhoto[], before: readonly TrayPhoto[]) => {
    for (const photo of now) {
      const old = before.find(({ id }) => id === photo.id);
      if (!photo.sample && (old === undefined || differs(photo, old))) write(photo);
    }
    for (const { id } of before) {
      const key = now.some((photo) => photo.id === id) ? undefined : keys.get(id);
      if (key !== undefined) void visit.drop(key).catch(() => undefined);
    }
  };
  follow(
    photos.getState().photos.filter(({ id }) => !keys.has(id)),
    [],
  );
  photos.subscribe((now, before) => {
    if (now.photos !== before.photos) follow(now.photos, before.photos);
  });
  journal.subscribe((now, before) => {
    if (now.keptAs === before.keptAs) return;
    for (const photo of photos.getState().photos) {
      if (now.keptAs[photo.id] !== before.keptAs[photo.id] && !photo.sample) write(photo);
    }
  });
}

/** Whether more changed than how far the measuring is. */
const differs = (now: TrayPhoto, old: TrayPhoto) =>
  now.report !== old.report ||
  now.shots !== old.shots ||
  now.lampMoved !== old.lampMoved ||
  now.ballAt !== old.ballAt ||
  (now.status !== old.status && now.status !== 'measuring');
