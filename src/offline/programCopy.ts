import type { ProgramFiles } from './programFiles';

/** How long the first byte of a file may take before it is asked for anew, ms. */
const PATIENCE_MS = 4000;

/** The copy of the program on this device, out of which it runs without a network. */
export interface ProgramCopy {
  /**
   * Fetches what is missing; files that an earlier version brought are not fetched again, but get this version's headers.
   *
   * @throws Error if a file cannot be had or kept; what is there stays, and the next try goes on from it.
   */
  take(): Promise<void>;
  /** Forgets earlier versions; `keepFiles` while windows of such a version may still load parts of it. */
  forgetOthers(keepFiles: boolean): Promise<void>;
  /** @returns null for what is not a file of the program: that goes to the network. */
  answer(request: Request): Promise<Response | null>;
}

/**
 * @param files - Of the version at hand.
 * @param base - Address of the program's folder, with a slash at its end.
 */
export function programCopy(files: ProgramFiles, base: string): ProgramCopy {
  // Several programs may share an origin, so names carry the folder.
  const prefix = `glintgrade ${new URL(base).pathname} `;
  const lastingCache = () => caches.open(`${prefix}files`);
  const changingName = `${prefix}version ${files.version}`;
  const addressOf = (name: string) => new URL(name, base).href;
  const later = files.later.map(addressOf);

  const keep = async (cache: Cache, address: string, mode: RequestCache): Promise<void> => {
    const response = await fetchWithoutWaiting(address, mode);
    if (!response.ok) throw new Error(`${address} could not be had: ${response.status}.`);
    await cache.put(address, withHeaders(response, files.headers));
  };

  return {
    async take() {
      const [lasting, changing] = await Promise.all([lastingCache(), caches.open(changingName)]);
      for (const address of files.changing.map(addressOf)) await keep(changing, address, 'reload');
      for (const address of files.lasting.map(addressOf)) {
        const held = await lasting.match(address);
        if (!held) await keep(lasting, address, 'default');
        else if (!carries(held, files.headers)) await lasting.put(address, withHeaders(held, files.headers));
      }
    },

    async forgetOthers(keepFiles) {
      const names = (await caches.keys()).filter((name) => name.startsWith(`${prefix}version `));
      await Promise.all(names.filter((name) => name !== changingName).map((name) => caches.delete(name)));
      if (keepFiles) return;
      const lasting = await lastingCache();
      const known = new Set([...files.lasting.map(addressOf), ...later]);
      const others = (await lasting.keys()).filter(({ url }) => !known.has(url));
      await Promise.all(others.map((request) => lasting.delete(request)));
    },

    async answer(request) {
      const address = pageOr(request.url, base);
      const lasting = await lastingCache();
      const found =
        (await (await caches.open(changingName)).match(address)) ?? (await lasting.match(address));
      if (found || !later.includes(address)) return found ?? null;
      await keep(lasting, address, 'default');
      return (await lasting.match(address)) ?? null;
    },
  };
}

/**
 * Chromium has a second request for a file wait, for up to 20 s, while a busy worker still reads the answer to the
 * first; asked past the browser's cache it does not.
 */
async function fetchWithoutWaiting(address: string, mode: RequestCache): Promise<Response> {
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), PATIENCE_MS);
  try {
    return await fetch(address, { cache: mode, signal: patience.signal });
  } catch (error) {
    if (!patience.signal.aborted) throw error;
    return fetch(address, { cache: 'no-store' });
  } finally {
    clearTimeout(timer);
  }
}

/** The page answers under its folder and its file's name, whatever is asked behind a question mark. */
function pageOr(url: string, base: string): string {
  const { origin, pathname, href } = new URL(url);
  const plain = origin + pathname;
  return plain === base || plain === `${base}index.html` ? base : href;
}

/** False for a file that a version with other headers brought. */
const carries = ({ headers }: Response, wanted: Readonly<Record<string, string>>): boolean =>
  Object.entries(wanted).every(([name, value]) => headers.get(name) === value);

function withHeaders(response: Response, more: Readonly<Record<string, string>>): Response {
  const headers = new Headers(response.headers);
  for (const [name, value] of Object.entries(more)) headers.set(name, value);
  return new Response(response.body, { status: response.status, statusText: response.statusText, headers });
}
