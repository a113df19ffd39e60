/**
 * A long day at the bench: grades photos one after the other in one page of the built app, each a little different, with
 * the last ten at hand and the others taken away: `npm run bench:life`, 500 of them, or `-- --photos N`. Prints what the
 * page holds, by the browser's own count, what its process takes from the system, and what it still takes when the
 * system has asked for memory back, as it does when it runs short: the browser keeps decoded pictures until then. Exits
 * with 1 when page or asked process are more than a tenth higher at the end than after the first tenth, or a photo was
 * not measured.
 */
import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { chromium, type Page } from 'playwright';
import sharp from 'sharp';
import { CHROMIUM_SWITCHES, findOrInstallChromium } from '../../.config/chromium.mjs';
import { serveBuilt } from '../helpers/serveBuilt';
import { watchPage } from '../helpers/watchPage';

const AT_HAND = 10;
const TARGET = 1.1;
const { values } = parseArgs({ options: { photos: { type: 'string', default: '500' } } });
const count = Number(values.photos);
const step = Math.max(1, Math.round(count / 10));

const served = await serveBuilt('src');
const browser = await chromium.launch({ args: CHROMIUM_SWITCHES, executablePath: findOrInstallChromium() });
const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
const page = await context.newPage();
const watched = await watchPage(context, page, served.url);
await page.goto(served.url);
await page.getByRole('button', { name: 'Cancel' }).click();
await forgetBodies(page);

const measured: { photos: number; pageMb: number; processMb: number; askedMb: number }[] = [];
let failed = 0;
console.log('photos   page MB   process MB   asked MB');
for (let k = 1; k <= count; k++) {
  if (!(await grade(page, k))) failed++;
  if (k % step !== 0) continue;
  const [pageMb, processMb] = [(await pageBytes(page)) / 1e6, (await processBytes()) / 1e6];
  await askBack(page);
  const askedMb = (await processBytes()) / 1e6;
  measured.push({ photos: k, pageMb, processMb, askedMb });
  const cells = [String(k).padStart(6), pageMb.toFixed(0).padStart(10), processMb.toFixed(0).padStart(13)];
  console.log(`${cells.join('')}${askedMb.toFixed(0).padStart(11)}`);
}
await browser.close();
await served.close();

const [first, last] = [measured[0]!, measured.at(-1)!];
const growth = { page: last.pageMb / first.pageMb, asked: last.askedMb / first.askedMb };
console.log(
  `after ${last.photos} photos over after ${first.photos}: page ${growth.page.toFixed(3)}, asked process ${growth.asked.toFixed(3)} (target ${TARGET}); process ${(last.processMb / first.processMb).toFixed(3)}`,
);
console.log(`not measured: ${failed}; errors on the console: ${watched.errors.length}`);
const isMet = growth.page <= TARGET && growth.asked <= TARGET && failed === 0;
process.exitCode = isMet && watched.errors.length === 0 ? 0 : 1;

/**
 * Keeps the browser from holding the body of every response for whoever drives it, some 0.5 MB a photo that nobody's own
 * browser holds. Playwright has no public way to say so.
 */
async function forgetBodies(page: Page): Promise<void> {
  type Internal = {
    delegate: { _mainFrameSession: { _client: { send(method: string): Promise<unknown> } } };
  };
  const { _connection } = page as unknown as { _connection: { toImpl(page: Page): Internal } };
  await _connection.toImpl(page).delegate._mainFrameSession._client.send('Network.disable');
}

/** Another size and light every time, so that no two photos are the same. */
async function photoOf(k: number): Promise<Buffer> {
  return sharp('sample-images/close-up.jpg')
    .resize(560 + 8 * (k % 17))
    .modulate({ brightness: 0.9 + 0.01 * (k % 11) })
    .jpeg({ quality: 92 })
    .toBuffer();
}

/** @returns Whether it was measured. */
async function grade(page: Page, k: number): Promise<boolean> {
  const name = `tray ${k}.jpg`;
  await page
    .getByLabel('Photo files')
    .setInputFiles({ name, mimeType: 'image/jpeg', buffer: await photoOf(k) });
  const shown = page.locator('.strip-photo', { hasText: name });
  await shown.locator('.strip-status', { hasText: /stone|not/i }).waitFor({ timeout: 300_000 });
  const isMeasured = /^\d+ stones?$/.test((await shown.locator('.strip-status').textContent()) ?? '');
  if ((await page.locator('.strip-photo').count()) > AT_HAND) {
    // The sample, at first, stays.
    await page.locator('.strip-photo').nth(1).click();
    await page.getByRole('button', { name: 'Take this photo away' }).click();
    await page.locator('.strip-photo').nth(AT_HAND).waitFor({ state: 'detached' });
    await shown.click();
  }
  return isMeasured;
}

/** Script, DOM and WebAssembly of page and workers, after a collection; `measureUserAgentSpecificMemory`. */
async function pageBytes(page: Page): Promise<number> {
  const session = await context.newCDPSession(page);
  await session.send('HeapProfiler.collectGarbage');
  await session.detach();
  return page.evaluate(async () => {
    const measure = (
      performance as unknown as { measureUserAgentSpecificMemory(): Promise<{ bytes: number }> }
    ).measureUserAgentSpecificMemory;
    return (await measure.call(performance)).bytes;
  });
}

/** Tells the page what the system tells it when memory runs short, and waits until it has given back what it can. */
async function askBack(page: Page): Promise<void> {
  const session = await context.newCDPSession(page);
  await session.send('Memory.simulatePressureNotification', { level: 'critical' });
  await session.detach();
  await page.waitForTimeout(3000);
}

/** Proportional set size of the page's processes; Linux only. */
async function processBytes(): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  const renderers = processInfo.filter(({ type }) => type === 'renderer');
  const sizes = renderers.map(async ({ id }) => {
    const text = await readFile(`/proc/${id}/smaps_rollup`, 'utf8').catch(() => '');
    return 1024 * Number(/^Pss:\s+(\d+)/m.exec(text)?.[1] ?? 0);
  });
  return (await Promise.all(sizes)).reduce((sum, one) => sum + one, 0);
}
