import AxeBuilder from '@axe-core/playwright';
import type { Page, Route } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

const EXAMPLE = /example-year[^/]*\.zip$/;

let watched: WatchedPage;
let page: Page;
/** The example's file, which is held back. */
let held: Promise<Route>;

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  held = new Promise((resolve) => {
    void page.route(EXAMPLE, resolve);
  });
  await page.goto(`${page.url()}?example#/journal`);
  await held;
}, 60_000);

afterAll(() => watched.close());

const line = () => page.locator('.work-place .work-line');

it('shows on every screen what is under way, in words that axe finds no fault with', async () => {
  await line().getByText('Opening the example year…').waitFor();
  const found: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations } = await new AxeBuilder({ page }).analyze();
    found.push(
      ...violations.map(({ id, nodes }) => `${colorScheme} ${id}: ${nodes.map(({ html }) => html)}`),
    );
  }
  expect(found).toEqual([]);
  await page.getByRole('link', { name: 'Plan' }).click();
  expect(await line().getByRole('progressbar', { name: 'Done so far' }).isVisible()).toBe(true);
  expect(await line().getByRole('button', { name: 'Cancel' }).isVisible()).toBe(true);
});

it('is cancelled with a tap, with nothing taken in', async () => {
  await line().getByRole('button', { name: 'Cancel' }).click();
  await line().waitFor({ state: 'detached' });
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  await page.getByText('This is an example').waitFor();
  expect(await page.locator('.batch-row').count()).toBe(0);
});

it('begins anew when the page is opened again', async () => {
  await page.unroute(EXAMPLE);
  await page.reload();
  await page.locator('.batch-row').first().waitFor();
  expect(await line().count()).toBe(0);
});
