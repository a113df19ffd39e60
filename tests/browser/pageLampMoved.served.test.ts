import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { notices } from '../../src/texts/english/notices';
import type { WatchedPage } from '../helpers/openPage';
import { openWithPhoto } from '../helpers/openWithPhoto';

const TRAY = 'sample-images/coarse-tray.jpg';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openWithPhoto(TRAY);
  page = watched.page;
}, 300_000);

afterAll(() => watched.close());

const addMoved = async (path: string) =>
  page
    .getByLabel('Photo with the lamp moved')
    .setInputFiles({ name: 'moved.jpg', mimeType: 'image/jpeg', buffer: await readFile(path) });

it('offers a second photo and says what it is good for', async () => {
  expect(await page.getByText('Pit or pattern?').isVisible()).toBe(true);
  const button = page.getByRole('button', { name: 'Add one with the lamp moved' });
  expect((await button.boundingBox())?.height).toBeGreaterThanOrEqual(47.5);
});

it('checks pits against it, and the list says which the lamp shades', { timeout: 300_000 }, async () => {
  await addMoved('sample-images/lamp-moved/coarse-tray.jpg');
  await page.getByText('Pits checked against a second photo').waitFor({ timeout: 280_000 });
  await page.locator('.sorting-picture svg').waitFor();
  await page
    .getByRole('button', { name: /^Stone 4\b/ })
    .last()
    .click();
  expect(await page.getByText('shaded by the lamp').count()).toBeGreaterThan(0);
  await page.getByRole('button', { name: 'Close', exact: true }).click();
});

it('says why a photo of another tray was not used, and takes it away again', {
  timeout: 300_000,
}, async () => {
  await page.getByRole('button', { name: 'Take it away' }).click();
  await page.getByText('Pit or pattern?').waitFor({ timeout: 280_000 });
  await addMoved('sample-images/mid-tray.jpg');
  await page.getByText(notices.warnings['moved-other-tray']).waitFor({ timeout: 280_000 });
});

it('asked nothing of any other server and left the console clean', () => {
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});
