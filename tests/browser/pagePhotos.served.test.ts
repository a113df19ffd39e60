import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright';
import sharp from 'sharp';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { notices } from '../../src/texts/english/notices';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

const POLISHED = fileURLToPath(new URL('../../sample-images/polished-tray.jpg', import.meta.url));

let watched: WatchedPage;
let page: Page;

// The sample is stopped first: these tests bring photos of their own.
beforeEach(async () => {
  watched = await openServedApp({ viewport: { width: 1440, height: 900 } });
  page = watched.page;
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByText('Stopped: this photo was not measured.').waitFor();
});

afterEach(async () => {
  await watched.close();
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});

const choose = (name: string, mimeType: string, buffer: Buffer) =>
  page.getByLabel('Photo files').setInputFiles({ name, mimeType, buffer });

it('stops measuring on request and measures again when asked', async () => {
  expect(await page.locator('.sorting-picture').count()).toBe(0);
  await page.getByRole('button', { name: 'Measure it again' }).click();
  await page.getByRole('progressbar').waitFor();
  expect(await page.getByRole('button', { name: 'Cancel' }).isVisible()).toBe(true);
});

it('says why a file is refused, stays usable, and grades the next photo', { timeout: 180_000 }, async () => {
  await choose('shopping.jpg', 'image/jpeg', Buffer.from('eggs, milk, grit'));
  await page.getByText(notices.refusals['not-an-image']).waitFor();
  await page.getByLabel('Photo files').setInputFiles(POLISHED);
  await page.locator('.sorting-picture svg').waitFor({ timeout: 170_000 });
  await page.locator('.token').first().waitFor();
  expect(await page.getByText(notices.refusals['not-an-image']).count()).toBe(0);
  expect(await page.locator('.strip-photo').count()).toBe(3);
});

it('lets the ball be pointed at when none is found', async () => {
  const bare = sharp({ create: { width: 900, height: 600, channels: 3, background: '#8a8780' } });
  await choose('bare.png', 'image/png', await bare.png().toBuffer());
  await page.getByText(notices.refusals['no-ball']).waitFor({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Show where the ball is' }).click();
  expect(await page.getByText('Tap the dark glass ball in the photo.').isVisible()).toBe(true);
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Enter');
  await page.locator('.note-trouble').waitFor({ timeout: 60_000 });
  expect(await page.getByText('Tap the dark glass ball in the photo.').count()).toBe(0);
});

it('measures anew when the ball is set to another size, and not when setup is left as it was', async () => {
  const setup = page.getByRole('button', { name: 'Setup' });
  await setup.click();
  await page.keyboard.press('Escape');
  expect(await page.getByText('Stopped: this photo was not measured.').isVisible()).toBe(true);
  await setup.click();
  await page.getByLabel('Diameter of the dark glass ball, mm').fill('20');
  await page.keyboard.press('Escape');
  await page.getByRole('progressbar').waitFor();
});

it('takes a photo dropped onto the page', async () => {
  const files = await page.evaluateHandle(() => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([], 'empty.jpg', { type: 'image/jpeg' }));
    return transfer;
  });
  await page.locator('.page').dispatchEvent('drop', { dataTransfer: files });
  await page.getByText(notices.refusals['empty-file']).waitFor();
  expect(await page.locator('.strip-photo').count()).toBe(2);
});
