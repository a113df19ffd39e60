const [TRIES, PAUSE_MS] = [4, 250];

/**
 * Opens something of the browser's database, and tries again when the store did not open: a broken one is put aside, and
 * the next try finds a new one.
 *
 * @throws What the last try threw, or any other error at once.
 */
export async function patiently<T>(open: () => PromiseLike<T>): Promise<T> {
  for (let tries = 1; ; tries++) {
    try {
      return await open();
    } catch (error) {
      if (!isBroken(error) || tries === TRIES) throw error;
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
    }
  }
}

/** What the browser says when its store does not open; Dexie wraps it now and then. */
const isBroken = (error: unknown) =>
  error instanceof Error && /UnknownError/.test(`${error.name} ${error.message}`);
