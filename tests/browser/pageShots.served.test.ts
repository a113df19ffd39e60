import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { notices } from '../../src/texts/english/notices';
import type { WatchedPage } from '../helpers/openPage';
import { openWithPhoto } from '../helpers/openWithPhoto';
import { shotFile } from '../helpers/shotFile';

const TRAY = 'sample-images/close-up.jpg';

let watched: WatchedPage;
let page: Page;

// A tray photographed too bright, on a phone; measured once for all tests of this file.
beforeAll(async () => {
  const bright = await shotFile(TRAY, 4);
  watched = await openWithPhoto({ name: 'bright.jpg', mimeType: 'image/jpeg', buffer: bright });
  page = watched.page;
}, 300_000);

afterAll(() => watched.close());

const addShot = (buffer: Buffer) =>
  page.getByLabel('Darker shots').setInputFiles({ name: 'dark.jpg', mimeType: 'image/jpeg', buffer });

it('offers a darker shot, for which the clipped ball gives reason', async () => {
  expect(await page.getByText(notices.warnings['ball-clipped']).isVisible()).toBe(true);
  const button = page.getByRole('button', { name: 'Add a darker shot', exact: true });
  expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(47.5);
});

it('measures again with the darker shot: the ball is clipped no more', { timeout: 300_000 }, async () => {
  await addShot(await shotFile(TRAY, 1));
  await page.getByText('Merged with another shot, 0.25 × as bright.').waitFor({ timeout: 280_000 });
  expect(await page.getByText(notices.warnings['ball-clipped']).count()).toBe(0);
  expect(await page.locator('.sorting-picture [data-stone]').count()).toBe(2);
});

it('takes the shot away again, and says why another one does not fit', { timeout: 300_000 }, async () => {
  await page.getByRole('button', { name: 'Take it away' }).click();
  await page.getByText(notices.warnings['ball-clipped']).waitFor({ timeout: 280_000 });
  await addShot(await shotFile('sample-images/mid-tray.jpg', 1));
  await page.getByText(notices.refusals['exposures-differ-in-scene']).waitFor({ timeout: 120_000 });
  expect(await page.getByRole('button', { name: 'Measure without the added shot' }).isVisible()).toBe(true);
});

it('asked nothing of any other server and left the console clean', () => {
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});
