import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openWithPhoto } from '../helpers/openWithPhoto';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openWithPhoto('sample-images/close-up.jpg');
  page = watched.page;
}, 300_000);

afterAll(async () => {
  await watched.close();
  expect(watched.errors).toEqual([]);
});

const button = (name: string) => page.getByRole('button', { name, exact: true });

it('leads through the tray in large print, pile by pile and stone by stone', async () => {
  await button('Large print').click();
  const said = page.getByRole('dialog').getByRole('status');
  const head = async () => (await said.locator('h2').textContent()) ?? '';
  const pile = await head();
  expect(await said.locator('.bench-numbers').textContent()).toMatch(/^\d+(, \d+)*$/);
  await button('Next').click();
  expect(await head()).toMatch(new RegExp(`^Stone \\d+: ${pile}$`));
  expect(
    await said.locator('h2').evaluate((node) => Number.parseFloat(getComputedStyle(node).fontSize)),
  ).toBeGreaterThan(24);
  await page.keyboard.press('ArrowLeft');
  expect(await head()).toBe(pile);
});

it('keeps its controls as large as a wet thumb, and breaks no rule of accessibility', async () => {
  const boxes = await Promise.all(
    (await page.getByRole('dialog').getByRole('button').all()).map((one) => one.boundingBox()),
  );
  expect(boxes).toHaveLength(4);
  for (const box of boxes) expect(box!.height).toBeGreaterThanOrEqual(60);
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await button('Close').click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
});

it('leads from a stone to where its verdict is explained, and back to the stone', async () => {
  await page.locator('.token').first().click();
  await page.getByRole('link', { name: 'Help: what the verdicts mean' }).click();
  await page.locator('#help-verdicts').waitFor();
  await page.goBack();
  await page.locator('.detail').waitFor();
});
