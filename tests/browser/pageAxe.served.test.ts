import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

/** Rules of WCAG 2.2, levels A and AA, and axe's own best practices: axe-core, github.com/dequelabs/axe-core. */
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  // The sample is measured in the meantime; the journal of the example has every kind of record.
  await page.goto(`${page.url()}?example#/journal`);
  await page.locator('.batch').first().waitFor();
}, 60_000);

afterAll(() => watched.close());

async function violations(): Promise<string[]> {
  const found: string[] = [];
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    const { violations: broken } = await new AxeBuilder({ page }).analyze();
    found.push(
      ...broken.map(({ id, nodes }) => `${colorScheme} ${id}: ${nodes.map(({ html }) => html).join(' | ')}`),
    );
  }
  return found;
}

it('breaks no rule in the journal', async () => {
  expect(await violations()).toEqual([]);
});

it('breaks no rule on the page of a batch', async () => {
  await page.locator('.batch').first().click();
  await page.locator('.stone-row').first().waitFor();
  expect(await violations()).toEqual([]);
});

it('breaks no rule while stones are named', async () => {
  await page.getByRole('button', { name: 'Which is which' }).first().click();
  await page.getByRole('dialog').waitFor();
  expect(await violations()).toEqual([]);
  await page.getByRole('button', { name: 'Not now' }).click();
});

it('breaks no rule on the page of a stone', async () => {
  await page.locator('.stone-row-name a').first().click();
  await page.locator('.timeline-strip').first().waitFor();
  expect(await violations()).toEqual([]);
});

it('breaks no rule where stones are compared', async () => {
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  await page.getByRole('link', { name: /^Compare stones/ }).click();
  await page.locator('.compare').waitFor();
  expect(await violations()).toEqual([]);
});

it('breaks no rule in the plan and in the help', async () => {
  await page.getByRole('link', { name: 'Plan', exact: true }).click();
  await page.locator('.plan').waitFor();
  expect(await violations()).toEqual([]);
  await page.getByRole('link', { name: 'Help', exact: true }).click();
  await page.getByRole('heading', { name: 'Help' }).waitFor();
  expect(await violations()).toEqual([]);
});

it('breaks no rule in setup and in the cautions', async () => {
  await page.getByRole('button', { name: 'Setup' }).click();
  expect(await violations()).toEqual([]);
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Safety' }).click();
  expect(await violations()).toEqual([]);
  await page.getByRole('button', { name: 'Done' }).click();
});

it('breaks no rule on the tray, and with a stone opened', async () => {
  await page.getByRole('link', { name: 'Tray', exact: true }).click();
  await page.locator('.sorting-picture svg').waitFor({ timeout: 280_000 });
  expect(await violations()).toEqual([]);
  await page.locator('.token').first().click();
  await page.locator('.detail').waitFor();
  expect(await violations()).toEqual([]);
}, 300_000);
