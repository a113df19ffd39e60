import type { Page } from 'playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  await page.getByRole('button', { name: 'Cancel' }).click();
}, 60_000);

afterAll(async () => {
  await watched.close();
  expect(watched.errors).toEqual([]);
});

it('outlines the stones while they are measured, and sorts them after', { timeout: 120_000 }, async () => {
  const buffer = await sharp('sample-images/close-up.jpg').resize(700).jpeg({ quality: 92 }).toBuffer();
  await page.getByLabel('Photo files').setInputFiles({ name: 'tray.jpg', mimeType: 'image/jpeg', buffer });
  const found = page.locator('.found-outlines path').last();
  await found.waitFor({ state: 'attached', timeout: 60_000 });
  // One closed line for each of the two stones.
  expect((await found.getAttribute('d'))?.match(/Z/gi)).toHaveLength(2);
  expect(await page.locator('.sorting-picture').count()).toBe(0);
  expect(await page.getByRole('progressbar').count()).toBe(1);
  await page.locator('.sorting-picture').waitFor({ timeout: 60_000 });
  expect(await page.locator('.found-outlines').count()).toBe(0);
});
