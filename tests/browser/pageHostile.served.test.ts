import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { OWN } from '../helpers/hostileBatch';
import { journalOf, withJournal } from '../helpers/hostileCase';
import { REFERENCES } from '../helpers/hostileReferences';
import { WORDS, worded } from '../helpers/hostileWords';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

/** One of each kind of words, each in a batch whose ids begin with another letter. */
const LETTERS = 'CDEFGHJKMNPQRSTVWXYZ';
const BATCHES = WORDS.map(([what, word = ''], i) => ({ what, word, letter: LETTERS[i]! }));
const lettered = (json: string, letter: string) => json.replaceAll(/"01[BJ](?=\d{23}")/g, `"01${letter}`);
const idIn = (letter: string) => `01${letter}${OWN.slice(3)}`;

let watched: WatchedPage;
let page: Page;

const goTo = (place: string) =>
  page.evaluate((hash) => {
    location.hash = hash;
  }, place);

async function takeIn(name: string, file: Blob): Promise<void> {
  const buffer = Buffer.from(await file.arrayBuffer());
  await goTo('/journal');
  await page.getByLabel('Take in a journal').setInputFiles({ name, mimeType: 'application/zip', buffer });
  await page.getByText(/records are new|All of it was here|nothing was taken in/).waitFor();
}

beforeAll(async () => {
  watched = await openServedApp({ reducedMotion: 'reduce' });
  page = watched.page;
  page.setDefaultTimeout(10_000);
  await page.getByRole('button', { name: 'Cancel' }).click();
}, 60_000);

afterAll(() => watched.close());

const ALIEN =
  'script:not([src]), iframe, form[action], a[href^="javascript:"], [onload], [onerror], [onfocus]';

/** What went wrong in the page, and what a word did in it. */
async function harm() {
  const found = await page.evaluate(
    (alien) => ({
      hurt: (window as { hurt?: unknown }).hurt ?? null,
      alien: [...document.querySelectorAll(alien)].map(({ outerHTML }) => outerHTML),
    }),
    ALIEN,
  );
  return { ...found, errors: [...watched.errors] };
}
const NONE = { hurt: null, alien: [], errors: [] };

/** Runs in the page: throws away its database and the safety copy, which would bring the records back. */
async function throwJournalAway(): Promise<void> {
  for (const { name = '' } of await indexedDB.databases())
    await new Promise<void>((resolve, reject) => {
      const request = indexedDB.deleteDatabase(name);
      request.onsuccess = () => resolve();
      request.onerror = () => reject(request.error);
    });
  for (const name of await caches.keys()) await caches.delete(name);
}

it('takes in a journal of hostile words as words', async () => {
  const journals = BATCHES.map(({ word, letter }) => lettered(journalOf(worded(word)), letter));
  const records = journals.flatMap((json) => (JSON.parse(json) as { records: unknown[] }).records);
  await takeIn('words.zip', withJournal(journalOf(records)));
  expect(await page.locator('.batch-row').count()).toBe(BATCHES.length);
  expect(await harm()).toEqual(NONE);
});

it.each(BATCHES)('shows $what as plain text in its batch and its stones', async ({ word, letter }) => {
  await goTo(`/journal/${idIn(letter)}`);
  await page.locator('.stone-row').first().waitFor();
  const shown = await page.locator('h2').first().textContent();
  const isSeen = /[^\s\u200b-\u200d\u2060\ufeff\ud800]/.test(word);
  expect(shown).toBe(isSeen ? word : 'Without a name');
  expect(await harm()).toEqual(NONE);
  await page.locator('.stone-row a').first().press('Enter');
  await page.locator('canvas.stone-picture').first().waitFor();
  expect(await harm()).toEqual(NONE);
});

it('plans and compares stones of such names', async () => {
  for (const place of ['plan', 'compare']) {
    await goTo(`/${place}`);
    await page.locator('h2').first().waitFor();
    expect(await harm()).toEqual(NONE);
  }
});

it('opens batches whose records point in circles or hold numbers at the ends', async () => {
  for (const { what, files } of REFERENCES.filter(({ refused }) => refused === null)) {
    // Each in a journal of its own.
    await page.evaluate(throwJournalAway);
    await page.reload();
    await page.locator('nav, header').first().waitFor();
    await takeIn('circles.zip', files().at(-1)!);
    const row = page.locator('.batch-row a').first();
    if ((await row.count()) > 0) {
      await row.press('Enter');
      await page.locator('h2').first().waitFor();
      const stone = page.locator('.stone-row a').first();
      if ((await stone.count()) > 0) {
        await stone.press('Enter');
        await page.getByRole('heading', { level: 2 }).first().waitFor();
      }
    }
    expect({ what, ...(await harm()) }).toEqual({ what, ...NONE });
  }
});
