/** What is remembered of one photo until the owner is done with it. */
export interface VisitEntry<Photo, Kept> {
  /** A ULID, so that entries come back in their order. */
  readonly key: string;
  readonly photo: Photo;
  /** Where the photo was kept in the journal; null before that. */
  readonly keptAs: Kept | null;
  /** The day it was last touched, such as 2026-10-03. */
  readonly day: string;
  /** Edition of the program that measured it. */
  readonly madeBy: string;
}

/** Photos at hand: unlike the journal's records they change and go. */
export interface Visit<Photo, Kept> {
  readonly all: () => Promise<VisitEntry<Photo, Kept>[]>;
  readonly put: (entry: VisitEntry<Photo, Kept>) => Promise<void>;
  readonly drop: (key: string) => Promise<void>;
}

/**
 * Opens the photos at hand of this browser.
 *
 * They lie in the cache, a file for each photo: a database would suffer from the many large writes when the browser is
 * killed meanwhile, and with it the journal (`safetyCopy.ts`).
 *
 * @param name - Name of the cache. Entries are plain values and, anywhere in them, blobs.
 * @throws Error when the browser forbids storage, as in some private windows, or offers no cache.
 */
export async function openVisit<Photo, Kept>(name = 'glintgrade visit'): Promise<Visit<Photo, Kept>> {
  const cache = await caches.open(name);
  const placed = new WeakMap<Blob, string>();
  let last: Promise<unknown> = Promise.resolve();
  // One after the other, so that what was put last is what stays.
  const inTurn = <T>(work: () => Promise<T>): Promise<T> => {
    const done = last.then(work);
    last = done.catch(() => undefined);
    return done;
  };
  return {
    all: () => inTurn(() => readAll<Photo, Kept>(cache, placed)),
    put: (entry) => inTurn(() => write(cache, placed, entry.key, entry)),
    drop: (key) =>
      inTurn(async () => {
        await cache.delete(address(key));
        await dropParts(cache, key, []);
      }),
  };
}

/** Entries have addresses; nothing is ever fetched from these. A part's begins with that of its entry. */
const address = (path: string) => new URL(`/at-hand/${path}`, location.origin).href;
const pathIn = (url: string) => new URL(url).pathname.split('/').slice(2);

interface Part {
  readonly part: string;
  readonly type: string;
}

/** The parts first: an entry that is there is whole. A part that was put before is not put again. */
async function write(
  cache: Cache,
  placed: WeakMap<Blob, string>,
  key: string,
  entry: unknown,
): Promise<void> {
  const blobs = new Map<string, Blob>();
  const text = JSON.stringify(entry, (_, value: unknown) => {
    if (!(value instanceof Blob)) return value;
    const known = placed.get(value);
    const part = known?.startsWith(`${key}/`) ? known : `${key}/${crypto.randomUUID()}`;
    if (part !== known) blobs.set(part, value);
    placed.set(value, part);
    return { part, type: value.type } satisfies Part;
  });
  for (const [part, blob] of blobs) await cache.put(address(part), new Response(blob));
  await cache.put(address(key), new Response(text));
  const used = [...text.matchAll(/"part":"([^"]+)"/g)].map(([, part]) => part!);
  await dropParts(cache, key, used);
}

async function dropParts(cache: Cache, key: string, used: readonly string[]): Promise<void> {
  for (const request of await cache.keys()) {
    const [owner, part] = pathIn(request.url);
    if (owner === key && part !== undefined && !used.includes(`${key}/${part}`)) await cache.delete(request);
  }
}

async function readAll<Photo, Kept>(
  cache: Cache,
  placed: WeakMap<Blob, string>,
): Promise<VisitEntry<Photo, Kept>[]> {
  const found: VisitEntry<Photo, Kept>[] = [];
  for (const { url } of await cache.keys()) {
    const [key, part] = pathIn(url);
    const response = key !== undefined && part === undefined ? await cache.match(url) : undefined;
    if (response)
      found.push((await withBlobs(cache, placed, await response.json())) as (typeof found)[number]);
  }
  return found.sort((a, b) => (a.key < b.key ? -1 : 1));
}

/** Puts the blobs back where they were. */
async function withBlobs(cache: Cache, placed: WeakMap<Blob, string>, value: unknown): Promise<unknown> {
  if (typeof value !== 'object' || value === null) return value;
  if (isPart(value)) {
    const response = await cache.match(address(value.part));
    const blob = new Blob([(await response?.blob()) ?? ''], { type: value.type });
    placed.set(blob, value.part);
    return blob;
  }
  if (Array.isArray(value)) return Promise.all(value.map((one) => withBlobs(cache, placed, one)));
  const entries = Object.entries(value).map(
    async ([name, one]) => [name, await withBlobs(cache, placed, one)] as const,
  );
  return Object.fromEntries(await Promise.all(entries));
}

const isPart = (value: object): value is Part =>
  'part' in value && typeof value.part === 'string' && 'type' in value && Object.keys(value).length === 2;
