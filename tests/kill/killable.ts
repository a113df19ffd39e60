import { spawn } from 'node:child_process';
import { chromium, type Page } from 'playwright';
import { CHROMIUM_SWITCHES, findChromium } from '../../.config/chromium.mjs';
import type { Said } from './killPage/main';

/** A Chromium that can be killed with all its processes at any moment. */
export interface Killable {
  readonly page: Page;
  /** Sends SIGKILL to all of its processes, and waits until they are gone. */
  kill(): Promise<void>;
}

/**
 * Opens an address in a Chromium of its own on a profile that outlives it.
 *
 * @param hear - Told whatever the page says.
 * @throws Error if no Chromium is found, or it does not start in half a minute.
 */
export async function openKillable(
  url: string,
  profile: string,
  hear: (said: Said) => void,
): Promise<Killable> {
  const program = findChromium();
  if (program === undefined)
    throw new Error('No Chromium was found: install it, or set CHROMIUM to its path.');
  const child = spawn(
    program,
    [...CHROMIUM_SWITCHES, `--user-data-dir=${profile}`, '--remote-debugging-port=0', 'about:blank'],
    // A group of its own, so that one signal reaches all of its processes.
    { detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const gone = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  const address = await new Promise<string>((resolve, reject) => {
    let said = '';
    const late = setTimeout(() => reject(new Error(`Chromium did not start: ${said}`)), 30_000);
    child.stderr.on('data', (data) => {
      said += data;
      const found = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
      if (!found) return;
      clearTimeout(late);
      resolve(found);
    });
  });
  const browser = await chromium.connectOverCDP(address);
  const page = await browser.contexts()[0]!.newPage();
  await page.exposeFunction('say', hear);
  await page.goto(url);
  await page.waitForFunction(() => 'work' in window);
  return {
    page,
    async kill() {
      process.kill(-child.pid!, 'SIGKILL');
      await gone;
      await browser.close().catch(() => undefined);
    },
  };
}
