import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright';
import { afterEach, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { readCsv } from '../helpers/readCsv';
import { openServedApp } from '../helpers/servedApp';

let watched: WatchedPage | null = null;

afterEach(async () => {
  await watched?.close();
  expect(watched?.errors).toEqual([]);
});

/** The page at a place, on a device of a language, with a page of a language. */
async function openAt(place: string, locale: string, language: 'en' | 'de'): Promise<Page> {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, locale, reducedMotion: 'reduce' });
  const { page } = watched;
  const settings = JSON.stringify({ cautionsSeen: true, language });
  await page.evaluate((kept) => localStorage.setItem('glintgrade settings 1', kept), settings);
  await page.goto(`${page.url().split('#')[0]}${place}`);
  await page.reload();
  return page;
}

/** Key by key, as a person types: browsers' number fields drop the mark of another language. */
const type = async (page: Page, label: RegExp, text: string) => {
  await page.getByLabel(label).fill('');
  await page.getByLabel(label).pressSequentially(text);
};

const WORLDS = [
  ['de-DE', 'de'],
  ['en-US', 'de'],
  ['de-DE', 'en'],
] as const;

it.each(WORLDS)(
  'takes 5,4 and 5.4 for the same, and refuses what may be two numbers: device %s, page %s',
  async (locale, language) => {
    const page = await openAt('#/journal', locale, language);
    const [add, name, holds, save, written] =
      language === 'en'
        ? ['Add a machine', /^Name$/, /^Holds, kg/, 'Add', '5.4 kg']
        : ['Maschine hinzufügen', /^Name$/, /^Fasst, kg/, 'Hinzufügen', '5,4 kg'];
    for (const typed of ['5,4', '5.4']) {
      await page.getByRole('button', { name: add }).click();
      await type(page, name, 'Barrel');
      await type(page, holds, language === 'en' ? '1,250' : '1.250');
      await page.getByRole('button', { name: save, exact: true }).click();
      expect(await page.getByLabel(holds).getAttribute('aria-invalid')).toBe('true');
      await type(page, holds, typed);
      await page.getByRole('button', { name: save, exact: true }).click();
      await page.getByLabel(holds).waitFor({ state: 'detached' });
    }
    expect(await page.getByText(written).count()).toBe(2);
  },
);

it('keeps a limit and the ball as they are typed with a comma, and shows them again so', async () => {
  const page = await openAt('?example#/', 'de-DE', 'de');
  await page.locator('.masthead > button').nth(1).click();
  const ball = page.getByLabel(/^Durchmesser der dunklen Glaskugel/);
  await ball.fill('');
  await ball.pressSequentially('17,5');
  await ball.blur();
  expect(await ball.inputValue()).toBe('17,5');
  await ball.fill('siebzehn');
  expect(await ball.getAttribute('aria-invalid')).toBe('true');
  await ball.blur();
  expect(await ball.inputValue()).toBe('17,5');
  const limit = page.locator('.limit input').first();
  await limit.fill('');
  await limit.pressSequentially('0,75');
  await limit.blur();
  const kept = await page.evaluate(() => JSON.parse(localStorage.getItem('glintgrade settings 1') ?? ''));
  expect(kept.ballMm).toBe(17.5);
  expect(Object.values(kept.limits.coarse)).toContain(0.75);
});

it('writes the table with points, commas between cells, wherever the device stands', async () => {
  const page = await openAt('?example#/journal', 'de-DE', 'de');
  await page.locator('.batch').first().waitFor();
  const press = page.getByRole('button', { name: 'Tabelle sichern' });
  const [download] = await Promise.all([page.waitForEvent('download'), press.click()]);
  const [head, ...body] = readCsv(await readFile(await download.path(), 'utf8'));
  const column = head!.indexOf('length mm');
  expect(body.length).toBeGreaterThan(10);
  for (const row of body) {
    expect(row).toHaveLength(head!.length);
    expect(row[column]).toMatch(/^\d+(\.\d+)?$/);
  }
  expect(body.some((row) => row[column]?.includes('.'))).toBe(true);
});
