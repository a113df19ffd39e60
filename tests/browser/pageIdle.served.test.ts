import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

const DAY = 24 * 60 * 60 * 1000;
const WEEK = 7 * DAY;
const PHOTO = 'sample-images/close-up.jpg';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  await page.clock.install({ time: new Date(2026, 2, 2, 21) });
  await page.getByRole('button', { name: 'Cancel' }).click();
  await measure(2);
  await keep();
}, 300_000);

afterAll(async () => {
  await watched.close();
  expect(watched.errors).toEqual([]);
});

/** Adds the photo and waits until as many photos as that are there, all measured but the sample. */
async function measure(photos: number): Promise<void> {
  await page.getByLabel('Photo files').setInputFiles(PHOTO);
  await page
    .locator('.strip-status', { hasText: '2 stones' })
    .nth(photos - 2)
    .waitFor({ timeout: 250_000 });
}

async function keep(): Promise<void> {
  await page.getByLabel('Its name').fill('Brook pebbles');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByText('Kept in the journal under').waitFor();
}

const timers = () => page.evaluate(() => document.getAnimations().length);

it('lets go over night of what was only for that day: to undo the keeping, to add another side', async () => {
  const passing = [page.locator('.undo-line'), page.getByLabel(/Another side of the stones kept today/)];
  for (const one of passing) await one.waitFor();
  // The offer stays while the pointer rests on it, as it does where the button just pressed was.
  await page.mouse.move(1, 1);
  await page.clock.fastForward(DAY);
  const left = async () => {
    await page.clock.fastForward(60_000);
    return (await Promise.all(passing.map((one) => one.count()))).reduce((sum, count) => sum + count, 0);
  };
  // Minutes more, since the offer begins to run out only when the pointer has left it.
  await expect.poll(left, { timeout: 20_000 }).toBe(0);
});

it('does nothing while it lies idle for a week', async () => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  const before = await page.locator('body').innerHTML();
  await page.clock.fastForward(WEEK);
  expect(await page.locator('body').innerHTML()).toBe(before);
  expect(asked).toEqual([]);
  expect(await timers()).toBe(0);
});

it('goes on a week later as if it had been opened just now: measures, knows the stones, and keeps them under that day', async () => {
  await measure(3);
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByText('Kept in the journal under').waitFor();
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  const row = page.locator('.batch-row');
  await row.waitFor();
  expect(await row.textContent()).toMatch(/2 stones, 2 checks, last 2026-03-10/);
});
