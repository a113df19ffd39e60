import type { Addition } from './additions';
import type { KeptPhoto } from './openJournal';
import type { JournalRecord } from './records';
import { type AnyRecord, RECORDS_VERSION, upgradeRecords } from './upgradeRecords';

/** A piece of an addition with all that it brought. */
export interface CopiedAddition {
  readonly records: readonly JournalRecord[];
  readonly photos: readonly KeptPhoto[];
}

/**
 * All that was added to a journal, once more, in another of the browser's stores.
 *
 * A database of a browser can be gone although nobody cleared it: Chromium's IndexedDB lies in a LevelDB whose log is
 * written on after a start. When the browser is killed while it writes (phones do so when memory is short), that log ends
 * in a torn entry; what is written behind it is lost at the next start, or the whole store with all of its databases.
 * `tests/kill` shows it. The cache, a file for each entry, does not share that fate.
 */
export interface SafetyCopy {
  /** Ids of all pieces copied. */
  readonly ids: () => Promise<Set<string>>;
  /** Copies a piece; a full or forbidden store is no reason to stop. */
  readonly keep: (addition: Addition, brought: CopiedAddition) => Promise<void>;
  /** A piece with the photos that are still there, brought up to this version; null where it cannot be read. */
  readonly read: (id: string) => Promise<(CopiedAddition & { readonly addition: Addition }) | null>;
}

interface Written {
  readonly version: number;
  readonly addition: Addition;
  readonly records: readonly AnyRecord[];
}

/** @returns Null where the browser has no cache for pages, as outside secure contexts. */
export async function openSafetyCopy(name: string): Promise<SafetyCopy | null> {
  try {
    const additions = await caches.open(`${name}: additions`);
    const pictures = await caches.open(`${name}: photos`);
    return {
      ids: async () => new Set((await additions.keys()).map(({ url }) => idIn(url))),
      keep: (addition, brought) => keep(additions, pictures, addition, brought).catch(() => undefined),
      read: (id) => read(additions, pictures, id).catch(() => null),
    };
  } catch {
    return null;
  }
}

/** Entries have addresses; nothing is ever fetched from these. */
const address = (id: string) => new URL(`/journal-copy/${encodeURIComponent(id)}`, location.origin).href;
const idIn = (url: string) => decodeURIComponent(new URL(url).pathname.split('/').at(-1) ?? '');

/** The photos first: a piece that is there is there with its photos. */
async function keep(
  additions: Cache,
  pictures: Cache,
  addition: Addition,
  { records, photos }: CopiedAddition,
): Promise<void> {
  for (const { key, photo, thumbnail } of photos) {
    await pictures.put(address(`${key}.photo`), pictureResponse(photo));
    await pictures.put(address(`${key}.thumbnail`), pictureResponse(thumbnail));
  }
  const written: Written = {
    version: RECORDS_VERSION,
    addition,
    records: records as unknown as readonly AnyRecord[],
  };
  await additions.put(address(addition.id), new Response(JSON.stringify(written)));
}

const pictureResponse = (picture: Blob) =>
  new Response(picture, { headers: { 'Content-Type': 'image/jpeg' } });

async function read(
  additions: Cache,
  pictures: Cache,
  id: string,
): Promise<(CopiedAddition & { readonly addition: Addition }) | null> {
  const found = await additions.match(address(id));
  if (!found) return null;
  const { version, addition, records } = (await found.json()) as Written;
  const photos: KeptPhoto[] = [];
  for (const key of addition.photos) {
    const [photo, thumbnail] = await Promise.all([
      pictures.match(address(`${key}.photo`)),
      pictures.match(address(`${key}.thumbnail`)),
    ]);
    if (photo && thumbnail)
      photos.push({ key, photo: await photo.blob(), thumbnail: await thumbnail.blob() });
  }
  return { addition, records: upgradeRecords(records, version), photos };
}
