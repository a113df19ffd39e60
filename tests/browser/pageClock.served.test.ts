import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright';
import { afterEach, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

let watched: WatchedPage | null = null;

afterEach(async () => {
  await watched?.close();
  expect(watched?.errors).toEqual([]);
});

/** The page where clocks are changed, at a moment with its offset from UTC; timers go on. */
async function openOn(moment: string, timezoneId = 'Europe/Berlin'): Promise<Page> {
  watched = await openServedApp({
    viewport: { width: 390, height: 844 },
    timezoneId,
    reducedMotion: 'reduce',
  });
  const { page } = watched;
  await at(page, moment);
  return page;
}

/** Sets the device's clock and opens the page anew, as on another day. */
async function at(page: Page, moment: string): Promise<void> {
  await page.clock.setFixedTime(new Date(moment));
  await page.goto(`${page.url().split('#')[0]}#/journal`);
  await page.reload();
  await page.getByText('In and out').waitFor();
}

const goTo = (page: Page, place: string) => page.getByRole('link', { name: place, exact: true }).click();

async function startBatch(page: Page, name: string): Promise<void> {
  await goTo(page, 'Journal');
  await page.getByRole('link', { name: 'Start a batch' }).click();
  await page.getByLabel('Name of the batch').fill(name);
  const known = page.getByLabel('Machine', { exact: true });
  if ((await known.count()) > 0) await known.selectOption({ label: 'Drum' });
  else {
    await page.getByLabel('Name', { exact: true }).fill('Drum');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    await known.waitFor();
  }
  await page.getByRole('button', { name: 'Start this batch today' }).click();
  await page.getByRole('heading', { name }).waitFor();
}

async function rename(page: Page, from: string, to: string): Promise<void> {
  await goTo(page, 'Journal');
  await page.getByRole('link', { name: from, exact: true }).click();
  await page.getByText('About this batch').click();
  await page.getByLabel('Name of the batch').fill(to);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByRole('heading', { name: to }).waitFor();
}

async function saved(page: Page, press: Locator): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), press.click()]);
  return readFile(await download.path());
}

it('keeps what was said last, though the clock went back a year in between, and hands the journal on whole', async () => {
  const page = await openOn('2026-03-02T12:00:00+01:00');
  await startBatch(page, 'Brook pebbles');
  await rename(page, 'Brook pebbles', 'Ford pebbles');
  await at(page, '2025-03-02T12:00:00+01:00');
  await rename(page, 'Ford pebbles', 'Mill pebbles');
  await page.getByRole('button', { name: 'Washed out today' }).click();
  await page.getByText('2026-03-02 to 2025-03-02').waitFor();
  await startBatch(page, 'Quarry finds');
  await at(page, '2026-03-20T12:00:00+01:00');
  const names = await page.locator('.batch').allInnerTexts();
  expect(names.sort()).toEqual(['Mill pebbles', 'Quarry finds']);
  await goTo(page, 'Plan');
  // A year and 18 days after its charge, less the usual 7: 376 days.
  await page.getByText('376 days over').waitFor();

  await goTo(page, 'Journal');
  const bundle = await saved(page, page.getByRole('button', { name: 'Save the journal' }));
  await watched?.close();
  const other = await openOn('2026-03-20T12:00:00+01:00');
  await other
    .locator('input[type="file"][accept*="zip"]')
    .setInputFiles({ name: 'journal.zip', mimeType: 'application/zip', buffer: bundle });
  await other.locator('.batch').first().waitFor();
  expect((await other.locator('.batch').allInnerTexts()).sort()).toEqual(names);
});

// Clocks in Berlin go from 2:00 to 3:00 on March 29, 2026, and from 3:00 back to 2:00 on October 25 (EU directive
// 2000/84/EC: last Sundays of March and October, 1:00 UTC).
it.each([
  ['forward', '2026-03-28T23:30:00+01:00', '2026-03-29T03:10:00+02:00', '2026-04-04T00:30:00+02:00'],
  ['back', '2026-10-24T23:30:00+02:00', '2026-10-25T02:50:00+01:00', '2026-10-31T23:30:00+01:00'],
])('counts days of the calendar over a night in which clocks go %s', async (_way, charged, morning, due) => {
  const page = await openOn(charged);
  await startBatch(page, 'Brook pebbles');
  await goTo(page, 'Plan');
  await page.getByText('Coarse in Drum, charged today').waitFor();
  await page.getByText('in 7 days').waitFor();
  await at(page, morning);
  await goTo(page, 'Plan');
  await page.getByText('Coarse in Drum, day 1 since its charge').waitFor();
  await page.getByText('in 6 days').waitFor();
  await at(page, due);
  await goTo(page, 'Plan');
  await page.getByText('Coarse in Drum, day 7 since its charge').waitFor();
  await page.locator('.due-when').getByText('today').waitFor();
});

it('takes the day from where the bench stands, half an hour either side of midnight', async () => {
  // Newfoundland is 3.5 hours behind UTC in winter: at 3:00 UTC it is still the day before.
  const page = await openOn('2026-01-10T03:00:00Z', 'America/St_Johns');
  await startBatch(page, 'Brook pebbles');
  await page.getByText('Coarse 2026-01-09 to now').waitFor();
  await page.clock.setFixedTime(new Date('2026-01-10T04:00:00Z'));
  await page.getByRole('button', { name: 'Washed out today' }).click();
  await page.getByText('Coarse 2026-01-09 to 2026-01-10').waitFor();
});
