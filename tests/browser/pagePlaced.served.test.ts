import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import type { Locator, Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openWithPhoto } from '../helpers/openWithPhoto';
import { placedPhoto, tracesIn } from '../helpers/placedPhoto';

/** A photo's name, which often says where it was taken. */
const PHOTO = 'meadow-by-the-brook.jpg';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  const buffer = await placedPhoto('sample-images/close-up.jpg', 900);
  expect(await tracesIn(buffer)).toContain('place 48.5, 9.25');
  watched = await openWithPhoto({ name: PHOTO, mimeType: 'image/jpeg', buffer });
  page = watched.page;
}, 300_000);

afterAll(() => watched.close());

const button = (name: string) => page.getByRole('button', { name, exact: true });

/** What a press saves. */
async function saved(press: Locator): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), press.click()]);
  return readFile(await download.path());
}

it('saves a sorting picture that tells nothing of where the photo was taken', async () => {
  const picture = await saved(button('Save the sorting picture'));
  expect(picture.toString('latin1', 1, 4)).toBe('PNG');
  expect(await tracesIn(picture)).toEqual([]);
});

it('hands on a journal, table, poster and card without place, camera, owner or the photo’s name', async () => {
  const keep = async (name: string) => {
    await page.clock.setFixedTime(new Date(2026, 2, name === 'Keep' ? 2 : 10, 12));
    await page.getByRole('link', { name: 'Journal', exact: true }).click();
    await page.getByRole('link', { name: 'Tray', exact: true }).click();
    await button(name).click();
    await button('Keeping…').waitFor({ state: 'detached' });
    await page.getByText('Kept in the journal under').waitFor();
  };
  await page.getByLabel('Its name').fill('Pebbles');
  await keep('Keep');
  await keep('Keep it once more');
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  await page.locator('.batch').first().waitFor();
  const bundle = await saved(button('Save the journal'));
  const table = await saved(button('Save a table'));
  await page.locator('.batch').first().click();
  const poster = await saved(button('Save a poster of this batch'));
  await page.locator('.stone-row-name a').first().click();
  const card = await saved(button('Save before and after as a picture'));
  for (const file of [bundle, table, poster, card]) {
    expect(await tracesIn(file)).toEqual([]);
    expect(file.includes(PHOTO.slice(0, 6))).toBe(false);
  }
  const { 'journal.json': journal, ...others } = unzipSync(bundle);
  expect(Buffer.from(journal!).includes(PHOTO.slice(0, 6))).toBe(false);
  const pictures = Object.keys(others).filter((name) => name.endsWith('.jpg'));
  expect(pictures).toHaveLength(2);
  expect(watched.errors).toEqual([]);
});
