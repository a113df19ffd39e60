import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openWithPhoto } from '../helpers/openWithPhoto';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openWithPhoto('sample-images/close-up.jpg');
  page = watched.page;
}, 300_000);

afterAll(async () => {
  await watched.close();
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});

const remembered = () =>
  page.evaluate(async () => {
    const cache = await caches.open('glintgrade visit');
    const keys = (await cache.keys()).filter(({ url }) => new URL(url).pathname.split('/').length === 3);
    const read = async (key: Request) => (await (await cache.match(key))?.json()) as never;
    const entries: { photo: { report: unknown }; keptAs: unknown }[] = await Promise.all(keys.map(read));
    return entries.map(({ photo, keptAs }) => ({ measured: photo.report !== null, kept: keptAs !== null }));
  });
async function piles(): Promise<string[]> {
  await page.locator('.group').first().waitFor();
  return page.locator('.group').allInnerTexts();
}

it('shows the photos at hand again after a reload, without measuring them anew', async () => {
  const before = await piles();
  await expect.poll(remembered).toEqual([{ measured: true, kept: false }]);
  await page.reload();
  await page.locator('.sorting-picture svg').waitFor();
  expect(await page.getByRole('progressbar').count()).toBe(0);
  expect(await piles()).toEqual(before);
});

it('still knows after a reload where a photo was kept', async () => {
  await page.getByLabel('Its name').fill('Brook pebbles');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByText('Kept in the journal under').waitFor();
  await expect.poll(remembered).toEqual([{ measured: true, kept: true }]);
  await page.reload();
  await page.getByText('Kept in the journal under').waitFor();
});

it('takes a photo away at once, and brings it back when that is undone', async () => {
  await page.getByRole('button', { name: 'Take this photo away' }).click();
  await page.getByText('close-up.jpg was taken away.').waitFor();
  await page.locator('.sorting-picture').waitFor({ state: 'detached' });
  await expect.poll(remembered).toEqual([]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.sorting-picture svg').waitFor();
  await expect.poll(remembered).toEqual([{ measured: true, kept: true }]);
});

it('lets a kept photo go on a later day, and starts with the sample again', async () => {
  await page.clock.setFixedTime(Date.now() + 2 * 86_400_000);
  await page.reload();
  await page.getByRole('button', { name: 'Cancel' }).click();
  await expect.poll(remembered).toEqual([]);
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  await page.getByText('Brook pebbles').waitFor();
});
