import { type Browser, chromium, type Page } from 'playwright';
import { CHROMIUM_SWITCHES, findOrInstallChromium } from '../../.config/chromium.mjs';
import { quantile } from './quantile';

const RUNS = 3;
/** Pages count as idle when they take less than this share of a processor in two looks, one after the other. */
const IDLE_SHARE = 0.1;
const LOOK_MS = 500;
const QUIET_LOOKS = 2;
/** A phone's screen, as in the other benches of the page. */
export const VIEWPORT = { width: 390, height: 844 };

/** Starts a Chromium with a profile of its own. */
export const openChromium = () =>
  chromium.launch({ args: CHROMIUM_SWITCHES, executablePath: findOrInstallChromium() });

/** What the page's start takes. */
export interface StartTimes {
  /** From navigation to the first frame in which a photo can be chosen, ms, in a fresh profile. */
  readonly cold: number;
  /** The same when the page is opened again from its copy on the device, ms. */
  readonly warm: number;
  /** Script that had come by then in a fresh profile, as it was sent, bytes. */
  readonly scriptBytes: number;
}

/**
 * Opens the page in fresh profiles and again from its copy on the device.
 *
 * @param url - Of the built page; the medians count.
 */
export async function timeStarts(url: string): Promise<StartTimes> {
  const runs: StartTimes[] = [];
  for (let run = 0; run < RUNS; run++) {
    const browser = await openChromium();
    try {
      runs.push(await timeStart(browser, url));
    } finally {
      await browser.close();
    }
  }
  const middle = (of: keyof StartTimes) =>
    quantile(
      runs.map((one) => one[of]),
      0.5,
    );
  return { cold: middle('cold'), warm: middle('warm'), scriptBytes: middle('scriptBytes') };
}

async function timeStart(browser: Browser, url: string): Promise<StartTimes> {
  const page = await (await browser.newContext({ viewport: VIEWPORT })).newPage();
  await page.addInitScript(noteUsable);
  await page.goto(url);
  const cold = await usableAt(page);
  const scriptBytes = await page.evaluate(scriptBefore, cold);
  await stopSample(page);
  await whenCopied(page);
  await whenIdle(browser);
  await page.reload();
  const warm = await usableAt(page);
  return { cold, warm, scriptBytes };
}

/** Runs in the page before its own code: notes the first frame in which photos can be chosen. */
function noteUsable(): void {
  const isUsable = () =>
    [...document.querySelectorAll<HTMLButtonElement>('.photo-buttons button')].some(
      (button) => !button.disabled && button.getClientRects().length > 0,
    );
  const look = () => {
    if (!isUsable()) return;
    observer.disconnect();
    requestAnimationFrame(() =>
      setTimeout(() => {
        (window as unknown as { usableAt: number }).usableAt = performance.now();
      }),
    );
  };
  const observer = new MutationObserver(look);
  observer.observe(document, { childList: true, subtree: true });
}

async function usableAt(page: Page): Promise<number> {
  const noted = await page.waitForFunction(() => (window as unknown as { usableAt?: number }).usableAt);
  return Number(await noted.jsonValue());
}

/** Runs in the page: bytes of all script that had come by then, headers included. */
function scriptBefore(time: number): number {
  const entries = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
  return entries
    .filter(({ name, responseEnd }) => /\.m?js$/.test(new URL(name).pathname) && responseEnd <= time)
    .reduce((sum, { transferSize }) => sum + transferSize, 0);
}

/** Ends the measuring of the sample, which a fresh profile begins with; its worker ends a little later (`whenIdle`). */
export async function stopSample(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Cancel' }).click({ timeout: 120_000 });
  await page.getByText('Stopped: this photo was not measured.').waitFor({ timeout: 120_000 });
}

/** Waits until the whole program is on the device and answers for the page. */
export async function whenCopied(page: Page): Promise<void> {
  await page.waitForFunction(
    async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller !== null,
    undefined,
    { timeout: 120_000 },
  );
}

/**
 * Waits until the browser's pages have had next to nothing to do for a second.
 *
 * @throws Error if they are still busy after two minutes.
 */
export async function whenIdle(browser: Browser): Promise<void> {
  const session = await browser.newBrowserCDPSession();
  let before = Number.NEGATIVE_INFINITY;
  let quiet = 0;
  for (let looks = 0; quiet < QUIET_LOOKS; looks++) {
    if (looks * LOOK_MS > 120_000) throw new Error('The page does not come to rest.');
    await new Promise((resolve) => setTimeout(resolve, LOOK_MS));
    const { processInfo } = await session.send('SystemInfo.getProcessInfo');
    const spent = processInfo
      .filter(({ type }) => type === 'renderer')
      .reduce((sum, { cpuTime }) => sum + cpuTime, 0);
    quiet = spent - before < IDLE_SHARE * (LOOK_MS / 1000) ? quiet + 1 : 0;
    before = spent;
  }
  await session.detach();
}

/**
 * What all files of one kind take as they are sent, bytes.
 *
 * @param url - Of the built page; its service worker lists the files.
 * @param ending - Of their names.
 */
export async function shippedBytes(url: string, ending: RegExp): Promise<number> {
  const worker = await (await fetch(new URL('serviceWorker.js', url))).text();
  const names = new Set([...worker.matchAll(/assets\/[\w.-]+/g)].map(([name]) => name));
  if (names.size === 0) throw new Error('The service worker lists no files.');
  names.add('serviceWorker.js');
  let sum = 0;
  for (const name of names) {
    if (!ending.test(name)) continue;
    const answer = await fetch(new URL(name, url));
    if (!answer.ok) throw new Error(`${name} is not there: ${answer.status}`);
    await answer.arrayBuffer();
    sum += Number(answer.headers.get('content-length'));
  }
  return sum;
}
