import type { Page } from 'playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

let watched: WatchedPage;
let page: Page;

const photoOf = async (name: string, width: number) => ({
  name,
  mimeType: 'image/jpeg',
  buffer: await sharp('sample-images/close-up.jpg').resize(width).jpeg({ quality: 92 }).toBuffer(),
});

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page
    .getByLabel('Photo files')
    .setInputFiles([await photoOf('one.jpg', 640), await photoOf('two.jpg', 660)]);
  await page.locator('.strip-status', { hasText: '2 stones' }).nth(1).waitFor({ timeout: 250_000 });
}, 300_000);

afterAll(async () => {
  await watched.close();
  expect(watched.errors).toEqual([]);
});

/** Shows a photo with its list drawn: that each cut-out is drawn shows in its pixels. */
async function show(name: string): Promise<void> {
  await page.locator('.strip-photo', { hasText: name }).click();
  await page.locator(`.strip-photo[aria-pressed="true"]`, { hasText: name }).waitFor();
  await page.locator('.token canvas').nth(1).waitFor();
  await expect
    .poll(() =>
      page.locator('.token canvas').evaluateAll((canvases) =>
        canvases.every((canvas) => {
          const { width, height } = canvas as HTMLCanvasElement;
          const { data } = (canvas as HTMLCanvasElement).getContext('2d')!.getImageData(0, 0, width, height);
          return data.some((value) => value > 0);
        }),
      ),
    )
    .toBe(true);
}

it('goes back and forth between measured photos, each with its stones', async () => {
  for (const name of ['one.jpg', 'two.jpg', 'one.jpg', 'two.jpg']) await show(name);
});

it('shows the other photo when one is taken away, and both when that is undone', async () => {
  await show('one.jpg');
  await page.getByRole('button', { name: 'Take this photo away' }).click();
  await page.getByText('one.jpg was taken away.').waitFor();
  await page.locator('.strip-photo', { hasText: 'one.jpg' }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Undo' }).click();
  await show('two.jpg');
  await show('one.jpg');
});
