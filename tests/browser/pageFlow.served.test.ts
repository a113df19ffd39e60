import sharp from 'sharp';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { type CameraPage, openWithCamera, videoFolder } from './cameraBrowser';
import { whenCopied } from './offlineSite';

/** A tray of twelve stones. */
const TRAY = 'sample-images/polished-tray.jpg';
const STONES = 12;

let videos: Awaited<ReturnType<typeof videoFolder>>;
let video: { readonly y4m: string };

beforeAll(async () => {
  videos = await videoFolder();
  video = await videos.write('tray', sharp(TRAY).resize(1500, 1000));
});

afterAll(() => videos.clear());

/** The page on its device: opened once with a network, and from then on without one. */
async function openOffline(viewport: { width: number; height: number }): Promise<CameraPage> {
  const opened = await openWithCamera(inject('appUrl'), video, { viewport, reducedMotion: 'reduce' });
  const { page } = opened;
  await whenCopied(page);
  await page.context().setOffline(true);
  await page.reload();
  await page.getByRole('button', { name: 'Understood' }).click();
  return opened;
}

const SIZES = [
  ['phone', { width: 390, height: 844 }],
  ['desktop', { width: 1440, height: 900 }],
] as const;

for (const [device, viewport] of SIZES) {
  it(`goes from a new batch over two sides of a tray to what is next, offline, on a ${device}`, {
    timeout: 400_000,
  }, async () => {
    const { page, errors, close } = await openOffline(viewport);
    const button = (name: string) => page.getByRole('button', { name, exact: true });
    const goTo = (place: string) => page.getByRole('link', { name: place, exact: true }).click();

    await goTo('Journal');
    await page.getByRole('link', { name: 'Start a batch' }).click();
    await page.getByLabel('Name of the batch').fill('Brook pebbles');
    await page.getByLabel('Name', { exact: true }).fill('Big bowl');
    await page.getByLabel('Kind').selectOption('vibratory');
    await button('Add').click();
    await page.getByLabel('First step').selectOption('polish');
    await button('Start this batch today').click();
    await page.getByRole('heading', { name: 'Brook pebbles' }).waitFor();

    const photograph = async () => {
      await goTo('Tray');
      await button('Take a photo').click();
      await page.getByRole('status').getByText('Good: take the photo.').waitFor({ timeout: 90_000 });
      expect(await page.locator('.camera-stone').count()).toBe(STONES);
      await button('Take the photo').click();
      await page.getByRole('progressbar').waitFor({ timeout: 60_000 });
      await page.getByRole('progressbar').waitFor({ state: 'detached', timeout: 200_000 });
      await expect.poll(() => page.locator('.token').count(), { timeout: 200_000 }).toBe(STONES);
    };
    const keep = async () => {
      await button('Keep').click();
      await Promise.race([
        page.getByRole('dialog').waitFor(),
        page.getByText('Kept in the journal under').waitFor(),
      ]);
      if (await page.getByRole('dialog').isVisible()) await button('All right: keep').click();
      await page.getByText('Kept in the journal under').waitFor();
    };

    await photograph();
    await page
      .locator('label.step')
      .filter({ hasText: /^polish$/ })
      .click();
    await page.getByLabel('Batch', { exact: true }).selectOption({ label: 'Brook pebbles' });
    await keep();
    await page.locator('.token').first().click();
    await button('Set aside').click();
    await page.getByText('You decided so; the advice was').waitFor();
    await button('Close').click();

    await photograph();
    expect(await page.getByLabel(/^Another side of the stones/).isChecked()).toBe(true);
    await keep();
    await page.getByRole('heading', { name: 'What is next' }).waitFor();

    await page.reload();
    await page.getByText('Kept in the journal under').waitFor();
    await expect.poll(() => page.locator('.token').count()).toBe(STONES);
    await goTo('Journal');
    await page.getByRole('link', { name: 'Brook pebbles' }).click();
    await page.getByText('2 sides').first().waitFor();
    await page.locator('.stone-row-name a').first().click();
    await page.locator('.check-faces').first().waitFor();
    await goTo('Plan');
    await page.locator('.plan').getByText('Brook pebbles').first().waitFor();
    await goTo('Journal');
    await page.getByRole('link', { name: /^Compare stones/ }).click();
    await page.locator('.compare').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      viewport.width,
    );
    await close();
    expect(errors).toEqual([]);
  });
}
