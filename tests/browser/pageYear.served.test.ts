import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readBundle } from '../../src/bundle/readBundle';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';
import { temporaryFolder } from '../helpers/temporaryFolder';

/** Eleven checks of seven stones, measured from rendered photos; sample-images/README.md says how it was made. */
const YEAR = 'sample-images/example-year.zip';
const NAME = 'A year of brook pebbles';

const folder = await temporaryFolder();
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByRole('link', { name: 'Journal' }).click();
}, 60_000);

afterAll(() => watched.close());

const recordsIn = async (path: string) =>
  (await readBundle(new Blob([new Uint8Array(await readFile(path))]))).records;

/** Presses a button that saves a file; where it went. */
async function saved(button: string): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  const path = `${folder.path}/${download.suggestedFilename()}`;
  await download.saveAs(path);
  return path;
}

it('opens the example year from an empty journal', async () => {
  await page.getByRole('link', { name: 'Look at an example year' }).click();
  await page.getByRole('link', { name: NAME }).waitFor();
  expect(await page.locator('.batch-row').textContent()).toMatch(
    /7 stones, 11 checks, last 2026-09-20 after polish, over/,
  );
});

it('shows the batch: every stone, run and check', async () => {
  await page.getByRole('link', { name: NAME }).click();
  await page.locator('.stone-row').nth(6).waitFor();
  expect(await page.locator('.run').count()).toBe(11);
  expect(await page.locator('.check').count()).toBe(11);
  expect(await page.getByText('you: advance').count()).toBe(0);
});

it('says of the stone with the long fracture that it will not clear, or is past mending, and shows its months', async () => {
  const [row] = await page.locator('.stone-row').filter({ hasText: 'Set aside' }).all();
  await row!.getByRole('link').click();
  await page.getByText(/6 checks, the last on 2026-04-05/).waitFor();
  expect(await page.locator('.verdict-now').textContent()).toMatch(/Saw it, break (it there|the piece off)/);
  expect(await page.locator('.checks > .check').count()).toBe(6);
  await page.goBack();
});

it('compares what the materials came to, and claims nothing of so few stones', async () => {
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  await page.getByRole('link', { name: /Compare stones/ }).click();
  await page
    .getByText(/stones? only/)
    .first()
    .waitFor();
  const told = (await page.locator('.compare').textContent()) ?? '';
  for (const material of ['agate', 'jasper', 'obsidian']) expect(told.toLowerCase()).toContain(material);
  await page.goBack();
});

it('saves all of it as one file, with nothing lost, and takes it in again without a change', async () => {
  const path = await saved('Save the journal');
  expect(await recordsIn(path)).toEqual(await recordsIn(YEAR));
  await page.getByLabel('Take in a journal').setInputFiles(path);
  await page.getByText('All of it was here already.').waitFor();
});

it('saves a table with a row for every sighting, and says when no check is due', async () => {
  const rows = (await readFile(await saved('Save a table'), 'utf8')).trimEnd().split('\r\n');
  const sightings = (await recordsIn(YEAR)).flatMap((record) =>
    record.kind === 'check' ? record.stones : [],
  );
  expect(rows).toHaveLength(sightings.length + 1);
  await page.getByRole('button', { name: 'Save reminders' }).click();
  await page.getByText('Nothing is due').waitFor();
});

it('keeps the example apart from the own journal, which takes the year in and refuses what is none', async () => {
  await page.getByRole('link', { name: 'Back to my journal' }).click();
  await page.getByText('Nothing is kept yet.').waitFor();
  const broken = { name: 'notes.zip', mimeType: 'application/zip', buffer: Buffer.from('not a zip') };
  await page.getByLabel('Take in a journal').setInputFiles(broken);
  await page.getByText('This is not a journal bundle').waitFor();
  await page.getByLabel('Take in a journal').setInputFiles(YEAR);
  await page.getByText(/records are new; nothing that was here was changed/).waitFor();
  await page.getByRole('link', { name: NAME }).waitFor();
});

it('saves a reminder once a batch is under way', async () => {
  await page.getByRole('link', { name: NAME }).click();
  await page.getByText('About this batch').click();
  await page.getByLabel(/^It is over/).uncheck();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('11 checks.').waitFor();
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  const calendar = await readFile(await saved('Save reminders'), 'utf8');
  expect(calendar).toContain(`SUMMARY:Check ${NAME}\r\n`);
  expect(calendar).toMatch(/DTSTART;VALUE=DATE:202609\d\d\r\n/);
});

it('prints a batch without the page around it', async () => {
  await page.getByRole('link', { name: NAME }).click();
  await page.locator('.stone-row').first().waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.masthead').isVisible()).toBe(false);
  expect(await page.getByRole('button', { name: 'Print this batch' }).isVisible()).toBe(false);
  expect(await page.locator('.stone-row').first().isVisible()).toBe(true);
  await page.emulateMedia({ media: 'screen' });
});

it('asked nothing of any other server and left the console clean', () => {
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});
