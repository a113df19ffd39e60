import type { BrowserContextOptions } from 'playwright';
import { inject } from 'vitest';
import { openPage, type WatchedPage } from './openPage';

/**
 * Opens the built app in a real Chromium; for `tests/browser/*.served.test.ts`, which run in Node.
 * The app is built and served once for all of them (serveAppOnce.ts).
 */
export function openServedApp(options: BrowserContextOptions = {}): Promise<WatchedPage> {
  return openPage(inject('appUrl'), options);
}
