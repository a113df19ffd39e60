import { readFileSync } from 'node:fs';
import type { Page } from 'playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { camera } from '../../src/texts/english/camera';
import { type Served, serveBuilt } from '../helpers/serveBuilt';
import { askedOfCamera, type CameraPage, openWithCamera, trackStates, videoFolder } from './cameraBrowser';
import type { CameraPageAnswer } from './cameraPage/main';

const PHONE = { viewport: { width: 390, height: 844 } };
const TRAY = 'sample-images/polished-tray';
/** A piece of it with the ball and one stone, which is measured in little time. */
const PIECE = { left: 840, top: 0, width: 640, height: 640 };

let served: Served;
let videos: Awaited<ReturnType<typeof videoFolder>>;
let tray: CameraPage;
let page: Page;

beforeAll(async () => {
  served = await serveBuilt('tests/browser/cameraPage');
  videos = await videoFolder();
  const video = await videos.write('tray', sharp(`${TRAY}.jpg`).resize(1080, 720));
  tray = await openWithCamera(`${served.url}#unmeasured`, video, { ...PHONE, canLock: true });
  page = tray.page;
});

afterAll(async () => {
  await tray.close();
  await served.close();
  await videos.clear();
});

const truth = JSON.parse(readFileSync(`${TRAY}.json`, 'utf8'));
const button = (name: string) => page.getByRole('button', { name, exact: true });

it('finds the ball and every stone of the live picture, and says that the photo can be taken, by the focused shutter', async () => {
  await page.getByRole('status').getByText(camera.advice.ready).waitFor({ timeout: 30_000 });
  expect(await button('Take the photo').evaluate((node) => node === document.activeElement)).toBe(true);
  expect(await page.locator('.camera-stone').count()).toBe(truth.stones.length);
  const ball = page.locator('.camera-ball .camera-line');
  const scale = truth.widthPx / 1080;
  for (const [name, expected] of [
    ['cx', truth.ball.column],
    ['cy', truth.ball.row],
    ['r', truth.ball.radiusPx],
  ])
    expect(Math.abs(Number(await ball.getAttribute(name)) - expected / scale)).toBeLessThan(1);
  expect(await page.locator('.camera-checks [data-state="good"]').count()).toBe(4);
});

it('turns the torch off, locks the camera once all is well, and says so', async () => {
  await page.getByText('Locked: exposure, focus and white balance.').waitFor();
  const asked = await askedOfCamera(page);
  expect(asked[0]).toEqual({ torch: false });
  expect(asked).toContainEqual({ exposureMode: 'manual', exposureTime: 120, iso: 100 });
  await button('Unlock').click();
  await page.getByText('Not locked yet.').waitFor();
  expect((await askedOfCamera(page)).at(-1)).toEqual({ whiteBalanceMode: 'continuous' });
});

it('makes the picture darker on request, and locks it again there', async () => {
  await button('Darker').click();
  await page.getByText('Locked: exposure, focus and white balance.').waitFor();
  expect(await askedOfCamera(page)).toContainEqual({ exposureCompensation: -0.5 });
});

it('fits a phone, with controls as large as a wet thumb', async () => {
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  const boxes = await Promise.all((await page.getByRole('button').all()).map((one) => one.boundingBox()));
  expect(boxes).toHaveLength(6);
  for (const box of boxes) {
    expect(box!.height).toBeGreaterThanOrEqual(44);
    expect(box!.y + box!.height).toBeLessThanOrEqual(844);
  }
});

it('lets the camera go while the page is put away, and takes it again on return', async () => {
  expect(await trackStates(page)).toContain('live');
  await page.evaluate(() => dispatchEvent(new Event('pagehide')));
  await expect.poll(() => trackStates(page)).not.toContain('live');
  await page.evaluate(() => dispatchEvent(new Event('pageshow')));
  await expect.poll(() => trackStates(page)).toContain('live');
});

it('takes the photo as a still where the browser can', async () => {
  await button('Take the photo').click();
  // Chromium's fake camera gives its stills as PNG.
  await page.locator('output').getByText('image/png').waitFor({ timeout: 20_000 });
});

it('is closed by Escape: the camera is let go and stops', async () => {
  await page.keyboard.press('Escape');
  await page.getByText('Closed.').waitFor();
  expect(new Set(await trackStates(page))).toEqual(new Set(['ended']));
  expect((await askedOfCamera(page)).at(-1)).toEqual({ whiteBalanceMode: 'continuous' });
  expect(tray.errors).toEqual([]);
});

it('takes a photo by keyboard, without stills from frames, that the analysis measures', async () => {
  const video = await videos.write('piece', sharp(`${TRAY}.jpg`).extract(PIECE));
  const piece = await openWithCamera(served.url, video, { ...PHONE, stills: false });
  await piece.page.getByRole('status').getByText(camera.advice.ready).waitFor({ timeout: 30_000 });
  await piece.page.keyboard.press('Space');
  await piece.page.getByText('Closed.').waitFor({ timeout: 20_000 });
  expect(new Set(await trackStates(piece.page))).toEqual(new Set(['ended']));
  const output = piece.page.locator('output');
  await expect.poll(() => output.textContent(), { timeout: 60_000 }).not.toBe('');
  const answer: CameraPageAnswer = JSON.parse((await output.textContent()) ?? '');
  expect(answer).toMatchObject({
    type: 'image/jpeg',
    stones: 1,
    widthPx: PIECE.width,
    heightPx: PIECE.height,
  });
  expect(Math.abs(answer.ballRadiusPx! - truth.ball.radiusPx)).toBeLessThan(0.01 * truth.ball.radiusPx);
  expect(piece.errors).toEqual([]);
  await piece.close();
});

it('says what to do when the camera is forbidden, and offers the device’s own', async () => {
  const denied = await openWithCamera(served.url, 'denied', PHONE);
  await denied.page.getByRole('status').getByText(camera.troubles.denied).waitFor();
  expect(await denied.page.getByRole('button', { name: 'Take the photo' }).count()).toBe(0);
  await denied.page.getByRole('button', { name: 'Use the device’s own camera' }).click();
  await denied.page.locator('output').getByText('fallback').waitFor();
  expect(denied.errors).toEqual([]);
  await denied.close();
});

it('says that there is no camera', async () => {
  const none = await openWithCamera(served.url, 'none', PHONE);
  await none.page.getByRole('status').getByText(camera.troubles['no-camera']).waitFor();
  expect(none.errors).toEqual([]);
  await none.close();
});
