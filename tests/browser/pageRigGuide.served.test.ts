import sharp from 'sharp';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { openWithCamera, videoFolder } from './cameraBrowser';

let videos: Awaited<ReturnType<typeof videoFolder>>;
let video: { readonly y4m: string };

beforeAll(async () => {
  videos = await videoFolder();
  video = await videos.write('tray', sharp('sample-images/polished-tray.jpg').resize(1500, 1000));
});

afterAll(() => videos.clear());

const SIZES = [
  ['phone', { width: 390, height: 844 }],
  ['desktop', { width: 1440, height: 900 }],
] as const;

for (const [device, viewport] of SIZES) {
  it(`sets lamp and camera up from the live picture to the remembered rig, on a ${device}`, async () => {
    const { page, errors, close } = await openWithCamera(`${inject('appUrl')}#/rig`, video, {
      viewport,
      reducedMotion: 'reduce',
    });
    await page.getByRole('heading', { name: 'Set up lamp and camera' }).waitFor();
    await page.locator('main').getByRole('button', { name: 'Take a photo' }).click();
    const facts = page.getByRole('list', { name: 'What the camera sees of the rig' });
    // The sample tray's ball is 16 mm across.
    await facts.getByText(/^Ball found: 16 mm are \d+ pixels\.$/).waitFor({ timeout: 60_000 });
    await facts.getByText(/^The lamp is .* across as seen from the stones/).waitFor();
    await facts.getByText(/of the camera's limit/).waitFor();
    await facts.getByText(/^1 mm is .* pixels/).waitFor();
    await page.getByRole('button', { name: 'Take the photo' }).click();
    await page.getByRole('button', { name: 'Remember this lamp and camera' }).click({ timeout: 100_000 });
    await page.getByText(/^Remembered on /).waitFor();
    expect(await page.locator('.guide-step[data-done="true"]').count()).toBe(2);
    await page.reload();
    await page.getByText('Now mark where lamp, camera and tray stand').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      viewport.width,
    );
    await page.getByRole('link', { name: 'Check a tray' }).click();
    await page.locator('.sorting-picture svg').waitFor();
    await close();
    expect(errors).toEqual([]);
  });
}
