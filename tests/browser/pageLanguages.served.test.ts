import type { Page } from 'playwright';
import { afterEach, expect, it } from 'vitest';
import type { Settings } from '../../src/state/settings';
import type { WatchedPage } from '../helpers/openPage';
import { SCREENS } from '../helpers/screens';
import { openServedApp } from '../helpers/servedApp';

let watched: WatchedPage | null = null;

afterEach(async () => {
  await watched?.close();
  expect(watched?.errors).toEqual([]);
});

/** Opens the example year on a phone, with settings as an earlier visit left them. */
async function openExample(settings: Partial<Settings>, locale = 'en-US'): Promise<Page> {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, locale, reducedMotion: 'reduce' });
  const { page } = watched;
  await page.evaluate((kept) => localStorage.setItem('glintgrade settings 1', JSON.stringify(kept)), {
    cautionsSeen: true,
    ...settings,
  });
  await page.goto(`${page.url().split('#')[0]}?example#/journal`);
  await page.locator('.batch').first().waitFor();
  return page;
}

/** All that is written on the page or read out, but for what the owner wrote: names, charges, sources. */
async function saidOn(page: Page): Promise<string[]> {
  const own = await ownWords(page);
  const texts = await page.evaluate(() => {
    const said: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      if (node.parentElement?.closest('script, style, noscript, [lang="en"]') == null)
        said.push(node.nodeValue ?? '');
    }
    for (const element of document.querySelectorAll('*')) {
      for (const name of ['aria-label', 'title', 'placeholder', 'alt', 'aria-description']) {
        said.push(element.getAttribute(name) ?? '');
      }
    }
    return said;
  });
  const strip = (text: string) => own.reduce((rest, word) => rest.replaceAll(word, ' '), text);
  return texts.map(strip).filter((text) => /\p{L}/u.test(text));
}

/** What the example's owner wrote, the longest first. */
function ownWords(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const open = indexedDB.open('glintgrade example');
    const db = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = db.transaction('records').objectStore('records').getAll();
    const records = await new Promise<Record<string, unknown>[]>((done) => {
      all.onsuccess = () => done(all.result);
    });
    db.close();
    const words = records.flatMap(({ name, charge, source }) => [name, charge, source]);
    return [
      ...new Set(words.filter((word): word is string => typeof word === 'string' && word.length > 3)),
    ].sort((a, b) => b.length - a.length);
  });
}

/** Words that hardly an English sentence does without, and that German has not. */
const ENGLISH =
  /\b(the|and|with|of|is|are|for|your|this|that|these|stones?|photos?|checks?|not|no|yet|days?|weeks?|its|it|to)\b/i;

it('says everything in German to a browser that wants German, and nothing wider than a phone', {
  timeout: 240_000,
}, async () => {
  const page = await openExample({}, 'de-DE');
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  const stray: string[] = [];
  for (const { name, reach } of SCREENS) {
    await reach(page);
    stray.push(
      ...(await saidOn(page)).filter((text) => ENGLISH.test(text)).map((text) => `${name}: ${text}`),
    );
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    if (width > 390) stray.push(`${name} is ${width} pixels wide`);
  }
  expect(stray).toEqual([]);
});

it('says no length in millimeters to who wants inches', { timeout: 240_000 }, async () => {
  const page = await openExample({ units: { length: 'inch', amount: 'grams', weight: 'lb' } });
  const stray: string[] = [];
  for (const { name, reach } of SCREENS) {
    await reach(page);
    const metric = (await saidOn(page)).filter((text) => /\d\s*(mm|cm|kg)\b|cm²|mm²/.test(text));
    stray.push(...metric.map((text) => `${name}: ${text}`));
  }
  expect(stray).toEqual([]);
});

it('changes its language at once when told to in Setup, and keeps it', async () => {
  const page = await openExample({});
  await page.getByRole('button', { name: 'Setup' }).click();
  await page.getByLabel('Language').selectOption('de');
  await page.getByRole('heading', { name: 'Sprache und Einheiten' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('link', { name: 'Schale', exact: true }).waitFor();
  await page.reload();
  await page.getByRole('link', { name: 'Schale', exact: true }).waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
});
