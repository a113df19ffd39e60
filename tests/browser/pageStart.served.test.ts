import { afterEach, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

let watched: WatchedPage | null = null;

afterEach(async () => {
  await watched?.close();
  expect(watched?.foreignRequests).toEqual([]);
  expect(watched?.errors).toEqual([]);
});

const SIZES = [
  ['phone', { width: 390, height: 844 }],
  ['desktop', { width: 1440, height: 900 }],
] as const;

for (const [device, viewport] of SIZES) {
  it(`starts a batch with its stones, machine and first charge, on a ${device}`, async () => {
    watched = await openServedApp({ viewport, reducedMotion: 'reduce' });
    const { page } = watched;
    await page.getByRole('link', { name: 'Journal', exact: true }).click();
    await page.getByRole('link', { name: 'Start a batch' }).click();
    await page.getByLabel('Name of the batch').fill('Brook pebbles');
    await page.getByLabel('Add a material').selectOption('malachite');
    await page.getByText(/^Contains copper/).waitFor();
    await page.getByLabel('Add a material').selectOption('agate');
    await page.getByText(/are more than about one Mohs step apart/).waitFor();
    await page.getByRole('button', { name: 'Without malachite' }).click();
    expect(await page.getByText(/Mohs step apart/).count()).toBe(0);
    await page.getByLabel('Where do they come from?').fill('the ford');
    await page.getByLabel('Name', { exact: true }).fill('Big barrel');
    await page.getByLabel('Holds, kg (may stay empty)').fill('2.7');
    await page.getByRole('button', { name: 'Add', exact: true }).click();
    // About 1 level tablespoon a pound of stones. Source: common practice; 2.7 kg are 6 lb.
    await page
      .getByText(/^6 tablespoons/)
      .first()
      .waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      viewport.width,
    );
    await page.getByRole('button', { name: 'Start this batch today' }).click();
    await page.getByRole('heading', { name: 'Brook pebbles' }).waitFor();
    await page.reload();
    const run = page.locator('.run');
    await run.getByText('Big barrel').waitFor();
    expect(await run.textContent()).toMatch(/6 tablespoons/);
    await page.getByText('About this batch').click();
    expect(await page.locator('.material-tags').textContent()).toContain('agate');
    expect(await page.getByLabel('Where do they come from?').inputValue()).toBe('the ford');
  });
}

it('does not start a batch without a name', async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 } });
  const { page } = watched;
  await page.goto(`${page.url().split('#')[0]}#/start`);
  await page.getByLabel('Name of the batch').fill('   ');
  await page.getByRole('button', { name: 'Start this batch today' }).click();
  expect(
    await page.getByLabel('Name of the batch').evaluate((field: HTMLInputElement) => field.validity.valid),
  ).toBe(false);
  await page.getByRole('link', { name: 'Journal', exact: true }).click();
  await page.getByText('Nothing is kept yet.').waitFor();
});
