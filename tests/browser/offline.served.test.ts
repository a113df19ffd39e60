import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { openPage, type WatchedPage } from '../helpers/openPage';
import { copiedFiles, type OfflineSite, openOfflineSite, whenCopied } from './offlineSite';

/** Stones in sample-images/coarse-tray.json. */
const SAMPLE_STONES = 10;
/** Widths of the sample and of tray.heic. */
const TRAY_PX = 1200;
const LINE = 'A new version is here.';
const HEIC = readFileSync(new URL('../golden/tray.heic', import.meta.url));

let site: OfflineSite;
let watched: WatchedPage;
let page: Page;

// One device for all tests, on which the program was opened once and its sample stopped.
beforeAll(async () => {
  site = await openOfflineSite('First');
  watched = await openPage(site.url, { viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  await whenCopied(page);
  await stopSample();
});

afterAll(async () => {
  await watched.close();
  await site.remove();
});

afterEach(() => {
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});

async function stopSample(): Promise<void> {
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByText('Stopped: this photo was not measured.').waitFor();
}

async function showsPhoto(widthPx: number): Promise<void> {
  await page.waitForFunction(
    (width) => document.querySelector<HTMLImageElement>('.stage-photo img')?.naturalWidth === width,
    widthPx,
  );
}

it('measures photos that were shared to it, and asks for no more after a reload', async () => {
  const answer = await page.evaluate(
    async (bytes) => {
      const form = new FormData();
      form.append('photos', new File([new Uint8Array(bytes)], 'bench.heic', { type: 'image/heic' }));
      // The device itself follows the answer; a page must not, or it would take the page for the photo.
      const { type, status } = await fetch('./share', { method: 'POST', body: form, redirect: 'manual' });
      return { type, status };
    },
    [...HEIC],
  );
  expect(answer).toEqual({ type: 'opaqueredirect', status: 0 });
  await page.goto(`${site.url}?shared`);
  await showsPhoto(TRAY_PX);
  expect(await page.getByText('Sample tray.').count()).toBe(0);
  expect(page.url()).toBe(site.url);
  // Still at hand, and not taken in once more.
  await page.reload();
  await showsPhoto(TRAY_PX);
  expect(await page.locator('.strip-photo').count()).toBe(0);
  await page.getByRole('button', { name: 'Take this photo away' }).click();
  await page.reload();
  await page.locator('.title-name').getByText('Sample tray').waitFor();
  await stopSample();
});

it('offers a new version and opens it only when asked, never while a photo is measured', async () => {
  await page.evaluate(() => {
    document.body.dataset.untouched = 'yes';
  });
  const before = await copiedFiles(page);
  await site.publish('Second');
  expect(await page.getByText(LINE).count()).toBe(0);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await page.getByText(LINE).waitFor();
  expect(await page.title()).toBe('First');
  expect(await page.locator('body').getAttribute('data-untouched')).toBe('yes');

  const open = page.getByRole('button', { name: 'Open it' });
  await page.getByRole('button', { name: 'Measure it again' }).click();
  await page.getByRole('progressbar').waitFor();
  expect(await open.isDisabled()).toBe(true);
  await stopSample();

  await open.click();
  await page.waitForFunction(() => document.title === 'Second');
  expect(await page.locator('body').getAttribute('data-untouched')).toBeNull();
  expect(await page.getByText(LINE).count()).toBe(0);
  expect(await page.locator('body').getAttribute('data-version')).toBe('Second');
  // The same files under the same names or new ones: nothing is kept twice, nothing is missing.
  expect((await copiedFiles(page)).sort()).toEqual(before.sort());
});

it('runs without a network after it was opened once: the sample is measured, and a HEIC opened', {
  timeout: 200_000,
}, async () => {
  await page.context().setOffline(true);
  await site.stop();
  await page.reload();
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  await page.locator('.sorting-picture svg').waitFor({ timeout: 180_000 });
  expect(await page.locator('.sorting-picture [data-stone]').count()).toBe(SAMPLE_STONES);
  await page
    .getByLabel('Photo files')
    .setInputFiles({ name: 'bench.heic', mimeType: 'image/heic', buffer: HEIC });
  await showsPhoto(TRAY_PX);
});
