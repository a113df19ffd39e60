import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { ODD_NAMES, oddJournal } from '../helpers/oddJournal';
import type { WatchedPage } from '../helpers/openPage';
import { SCREENS } from '../helpers/screens';
import { openServedApp } from '../helpers/servedApp';

const WIDTH = 390;

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: WIDTH, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  const buffer = await oddJournal();
  await page
    .locator('input[type="file"][accept*="zip"]')
    .setInputFiles({ name: 'odd.zip', mimeType: 'application/zip', buffer });
  await page.locator('.batch').first().waitFor({ timeout: 60_000 });
}, 200_000);

afterAll(() => watched.close());

/** What reaches over the edge of the screen, or would be cut off there, other than what is meant to be scrolled. */
function tooWide(): Promise<string[]> {
  return page.evaluate((width) => {
    const isScrolled = (node: Element | null): boolean =>
      node !== null &&
      (/(auto|scroll)/.test(getComputedStyle(node).overflowX) || isScrolled(node.parentElement));
    const wide = [...document.body.querySelectorAll<HTMLElement>('*')].filter((node) => {
      const { left, right, width: own } = node.getBoundingClientRect();
      return own > 0 && (right > width + 1 || left < -1) && !isScrolled(node.parentElement);
    });
    const of = (node: Element) => `${node.tagName}.${node.className}: ${node.textContent?.slice(0, 40)}`;
    const page = document.documentElement.scrollWidth > width ? ['the page'] : [];
    return [...page, ...wide.map(of)];
  }, WIDTH);
}

it.each(SCREENS.map(({ name, reach }) => [name, reach] as const))(
  'fits a phone whatever things are called: %s',
  { timeout: 200_000 },
  async (_name, reach) => {
    await reach(page);
    expect(await tooWide()).toEqual([]);
  },
);

/** Where a piece of text stands on the screen, px. */
const leftOf = (selector: string, words: string) =>
  page
    .locator(selector)
    .first()
    .evaluate((node, sought) => {
      const walker = document.createTreeWalker(node, NodeFilter.SHOW_TEXT);
      for (let text = walker.nextNode(); text; text = walker.nextNode()) {
        const at = text.textContent?.indexOf(sought) ?? -1;
        if (at < 0) continue;
        const range = document.createRange();
        range.setStart(text, at);
        range.setEnd(text, at + sought.length);
        return range.getBoundingClientRect().left;
      }
      throw new Error(`"${sought}" is not there.`);
    }, words);

it('fits a phone on every batch and its stones, and keeps their signs where the page has them', {
  timeout: 200_000,
}, async () => {
  await page.keyboard.press('Escape');
  await page.goto(`${page.url().split('#')[0]}#/journal`);
  await page.locator('.batch').first().waitFor();
  const addresses = await page
    .locator('.batch')
    .evaluateAll((all) => all.map((link) => link.getAttribute('href') ?? ''));
  expect(addresses.length).toBe(Object.keys(ODD_NAMES).length);
  let turned = 0;
  for (const address of addresses) {
    await page.evaluate((hash) => location.assign(hash), address);
    await page.getByText('About this batch').waitFor();
    expect(await tooWide()).toEqual([]);
    const title = (await page.locator('h2').last().textContent()) ?? '';
    const stones = await page
      .locator('.stone-row-name a')
      .evaluateAll((all) => all.slice(0, 4).map((link) => link.getAttribute('href') ?? ''));
    for (const stone of stones) {
      await page.evaluate((hash) => location.assign(hash), stone);
      await page.locator('.timeline-strip, .checks').first().waitFor();
      expect(await tooWide()).toEqual([]);
      if (title !== ODD_NAMES.rightToLeft) continue;
      turned++;
      const path = '.journal-path a';
      expect(await leftOf(path, '‹')).toBeLessThan(await leftOf(path, '(3)'));
      // Within the name brackets and number follow the Hebrew, to its left.
      expect(await leftOf(path, '(3)')).toBeLessThan(await leftOf(path, 'אבני'));
    }
  }
  expect(turned).toBeGreaterThan(0);
});

it('fits a phone where sources and batches are compared', async () => {
  await page.evaluate(() => location.assign('#/compare'));
  for (const by of ['Source', 'Batch']) {
    await page.locator('label').filter({ hasText: by }).click();
    for (const group of await page.locator('.compare-name').all()) await group.click();
    await page.getByText('The same as a table').click();
    expect(await tooWide(), by).toEqual([]);
  }
});
