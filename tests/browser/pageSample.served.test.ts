import type { Page } from 'playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

/** Stones in sample-images/coarse-tray.json. */
const SAMPLE_STONES = 10;

let watched: WatchedPage;
let page: Page;

// One analysis of the sample for all tests of this file, on a phone.
beforeAll(async () => {
  watched = await openServedApp({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    reducedMotion: 'reduce',
  });
  page = watched.page;
  await page.locator('.sorting-picture svg').waitFor({ timeout: 170_000 });
}, 180_000);

afterAll(() => watched.close());

const groups = () =>
  page.locator('.group').evaluateAll((all) => all.map((group) => group.getAttribute('aria-label')));

it('grades the sample tray and shows the sorting picture, saying that it is a sample', async () => {
  expect(await page.locator('.sorting-picture [data-stone]').count()).toBe(SAMPLE_STONES);
  expect(await page.locator('.sorting-picture [data-ball]').count()).toBe(1);
  expect(await page.getByText('Sample tray.').isVisible()).toBe(true);
  await page.locator('.token').first().waitFor();
  expect(await page.locator('.token').count()).toBe(SAMPLE_STONES);
});

it('grades anew at once when the step changes, without measuring again', async () => {
  await page.evaluate(() => {
    const send = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (this: Worker, ...order: Parameters<typeof send>) {
      document.body.dataset.asked = 'yes';
      send.apply(this, order);
    } as typeof send;
  });
  const coarse = await groups();
  await page.getByLabel('polish', { exact: true }).check();
  const polish = await groups();
  await page.getByLabel('coarse', { exact: true }).check();
  expect(polish).not.toEqual(coarse);
  expect(await groups()).toEqual(coarse);
  expect(await page.locator('body').getAttribute('data-asked')).toBeNull();
});

it('opens a tapped stone: verdict and reasons, crop, gloss and smoothness', async () => {
  const stone = await page.locator('#stone-3').boundingBox();
  await page.touchscreen.tap(
    (stone?.x ?? 0) + (stone?.width ?? 0) / 2,
    (stone?.y ?? 0) + (stone?.height ?? 0) / 2,
  );
  const detail = page.getByRole('region', { name: /^Stone 3/ });
  await detail.waitFor();
  expect(await detail.locator('.verdict-word').textContent()).not.toBe('');
  expect(await detail.locator('.reasons li').count()).toBeGreaterThan(0);
  expect(await detail.getByRole('img', { name: 'Stone 3 enlarged' }).isVisible()).toBe(true);
  expect(await detail.getByRole('heading', { name: 'Smoothness' }).count()).toBe(1);
  await detail.getByRole('button', { name: 'Close' }).click();
  expect(await detail.count()).toBe(0);
});

it('can be walked by keyboard alone: arrows between stones, Enter opens, Escape returns', async () => {
  await page.locator('#stone-1').focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('stone-3');
  await page.keyboard.press('Enter');
  await page.getByRole('region', { name: /^Stone 3/ }).waitFor();
  await page.keyboard.press('ArrowRight');
  await page.getByRole('region', { name: /^Stone 4/ }).waitFor();
  await page.keyboard.press('Escape');
  expect(await page.getByRole('region', { name: /^Stone 4/ }).count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('stone-4');
});

it('enlarges the photo and comes back to the whole tray', async () => {
  const width = async () => (await page.locator('.stage-photo').boundingBox())?.width ?? 0;
  const whole = await width();
  await page.getByRole('button', { name: 'Enlarge the photo' }).click();
  expect(await width()).toBeCloseTo(1.6 * whole, 0);
  await page.getByRole('button', { name: 'Whole tray' }).click();
  expect(await width()).toBeCloseTo(whole, 0);
});

it('shows the photo at the screen’s size, and all of its pixels once it is enlarged', async () => {
  const shows = (width: number) =>
    page.waitForFunction(
      (wished) => document.querySelector<HTMLImageElement>('.stage-photo img')?.naturalWidth === wished,
      width,
    );
  await shows(1200);
  for (let k = 0; k < 4; k++) await page.getByRole('button', { name: 'Enlarge the photo' }).click();
  await shows(1800);
  await page.getByRole('button', { name: 'Whole tray' }).click();
  await shows(1200);
});

it('brings out the stones of one verdict and dims the others', async () => {
  const only = page.getByRole('button', { name: /^Show only/ }).first();
  await only.click();
  const dimmed = await page.locator('.sorting-picture [data-stone][opacity]').count();
  const own = await page.locator('.group').first().locator('.token').count();
  await page.getByRole('button', { name: /^Show all/ }).click();
  expect(dimmed).toBe(SAMPLE_STONES - own);
  expect(await page.locator('.sorting-picture [data-stone][opacity]').count()).toBe(0);
});

it('saves the sorting picture with its legend as PNG', async () => {
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the sorting picture' }).click();
  const download = await saved;
  expect(download.suggestedFilename()).toBe('Sample tray-sorted.png');
  const { format, width, height } = await sharp(await download.path()).metadata();
  expect({ format, width }).toEqual({ format: 'png', width: 1800 });
  expect(height).toBeGreaterThan(1200);
});

it('shows the cautions in short on the first visit, and all of them one tap away', async () => {
  expect(await page.getByLabel('Safety in short').isVisible()).toBe(true);
  await page.getByRole('button', { name: 'Understood' }).click();
  expect(await page.getByLabel('Safety in short').count()).toBe(0);
  await page.getByRole('button', { name: 'Safety' }).click();
  expect(await page.getByRole('dialog', { name: 'Safety' }).textContent()).toContain('sets like cement');
  await page.keyboard.press('Escape');
  expect(await page.getByRole('dialog').count()).toBe(0);
});

it('fits a phone: no sideways scroll, and every control is as large as a thumb and within reach', async () => {
  const small = await page.evaluate(() => {
    const controls = [...document.querySelectorAll('button:not(.stone-button), select, label.step')];
    return controls
      .map((control) => ({ name: control.textContent, box: control.getBoundingClientRect() }))
      .filter(({ box }) => box.width < 47.5 || box.height < 47.5 || box.left < 0 || box.right > innerWidth)
      .map(({ name }) => name);
  });
  expect(small).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});

it('asked nothing of any other server and left the console clean', () => {
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});
