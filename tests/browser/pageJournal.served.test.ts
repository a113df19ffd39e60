import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openWithPhoto } from '../helpers/openWithPhoto';

const TRAY = 'sample-images/close-up.jpg';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openWithPhoto(TRAY);
  page = watched.page;
}, 300_000);

afterAll(() => watched.close());

const openJournal = () => page.getByRole('button', { name: 'Journal' }).click();
const done = () => page.getByRole('button', { name: 'Done' }).click();

it('has an empty journal at first, and says how to fill it', async () => {
  await openJournal();
  expect(await page.getByText('Nothing is kept yet.').isVisible()).toBe(true);
  await done();
});

it('keeps a check under a new batch, with its photo and verdicts', async () => {
  await page.getByLabel('Its name').fill('Brook pebbles');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByText('Kept in the journal.').waitFor();
  await openJournal();
  await page.getByRole('button', { name: /^Brook pebbles.*1 check, last .* after coarse/ }).click();
  await page.locator('.check-photo').waitFor();
  expect(await page.locator('.check').textContent()).toContain('2 stones');
  const counted = await page.locator('.check-action strong').allInnerTexts();
  expect(counted.reduce((sum, text) => sum + Number(text), 0)).toBe(2);
  await done();
});

it('adds a second check to the same batch', async () => {
  expect(await page.getByLabel('Batch', { exact: true }).inputValue()).not.toBe('new');
  await page.getByRole('button', { name: 'Keep it once more' }).click();
  await openJournal();
  await page.getByRole('button', { name: /^Brook pebbles.*2 checks/ }).waitFor();
  await done();
});

it('still has all of it when the page is opened again', async () => {
  await page.reload();
  await openJournal();
  await page.getByRole('button', { name: /^Brook pebbles.*2 checks/ }).click();
  await page.locator('.check-photo').first().waitFor();
  expect(await page.locator('.check').count()).toBe(2);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBe(390);
});

it('asked nothing of any other server and left the console clean', () => {
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});
