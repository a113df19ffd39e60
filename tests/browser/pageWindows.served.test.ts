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

afterAll(() => watched.close());

const button = (name: string) => page.getByRole('button', { name, exact: true });
const goTo = (where: Page, place: 'Tray' | 'Journal') =>
  where.getByRole('link', { name: place, exact: true }).click();

it('shows in another window at once what was added in this one, and the other way round', async () => {
  await goTo(page, 'Journal');
  const other = await page.context().newPage();
  await other.goto(`${page.url().split('#')[0]}#/start`);
  await other.getByLabel('Name of the batch').fill('Quarry finds');
  await other.getByRole('button', { name: 'Start this batch today' }).click();
  await other.getByRole('heading', { name: 'Quarry finds' }).waitFor();
  await page.getByRole('link', { name: 'Quarry finds' }).waitFor();
  await goTo(other, 'Journal');
  await goTo(page, 'Tray');
  await page.getByLabel('Batch', { exact: true }).selectOption({ label: 'Quarry finds' });
  await button('Keep').click();
  await page.getByRole('button', { name: 'Keeping…' }).waitFor({ state: 'detached' });
  await other.getByText(/Quarry finds/).waitFor();
  await other
    .getByText(/2 stones, 1 check/)
    .first()
    .waitFor();
  expect(await other.locator('.batch-row').count()).toBe(1);
  await other.close();
});
