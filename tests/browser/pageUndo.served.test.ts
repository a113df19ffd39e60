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
  expect(watched.errors).toEqual([]);
});

const goTo = (place: 'Tray' | 'Journal') => page.getByRole('link', { name: place, exact: true }).click();
const button = (name: string) => page.getByRole('button', { name, exact: true });

async function keepAs(name: string): Promise<void> {
  await page.getByLabel('Its name').fill(name);
  await button('Keep').click();
  await page.getByText('Kept in the journal under').waitFor();
}

it('takes a keeping back, with the batch and the stones that were new by it', async () => {
  await keepAs('Brook pebbles');
  await page.getByText('close-up.jpg is in the journal.').waitFor();
  await button('Undo').click();
  await button('Keep').waitFor();
  await goTo('Journal');
  await page.getByText('Nothing is kept yet.').waitFor();
  await goTo('Tray');
});

it('numbers the stones from one again when it is kept after all', async () => {
  await keepAs('Quarry finds');
  await goTo('Journal');
  await page.getByRole('link', { name: 'Quarry finds' }).click();
  await page.locator('.stone-row').nth(1).waitFor();
  expect(await page.locator('.stone-row-name a').allInnerTexts()).toEqual(['Stone 1', 'Stone 2']);
});

it('takes a check out of its batch, and back in when that is undone', async () => {
  await button('Take this check out').click();
  await page.getByText('No check yet. Photograph').waitFor();
  await button('Undo').click();
  await page.locator('.stone-row').nth(1).waitFor();
});

it('ends a run and takes it out, and undoes both', async () => {
  await button('Start a run').click();
  await button('Add the run').click();
  await button('Washed out today').click();
  await button('Washed out today').waitFor({ state: 'detached' });
  await button('Undo').click();
  await button('Washed out today').waitFor();
  await button('Take this run out').click();
  await page.locator('.run').waitFor({ state: 'detached' });
  await button('Undo').click();
  await page.locator('.run').waitFor();
});
