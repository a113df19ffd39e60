import { afterAll, beforeAll, expect, it } from 'vitest';
import { camera } from '../../src/texts/english/camera';
import type { WatchedPage } from '../helpers/openPage';
import { type Served, serveBuilt } from '../helpers/serveBuilt';
import { type FakeCamera, openWithCamera, trackStates, videoFolder } from './cameraBrowser';

const PHONE = { viewport: { width: 390, height: 844 } };
let served: Served;
let videos: Awaited<ReturnType<typeof videoFolder>>;
let video: FakeCamera;

beforeAll(async () => {
  served = await serveBuilt('tests/browser/cameraPage');
  videos = await videoFolder();
  const { default: sharp } = await import('sharp');
  video = await videos.write('tray', sharp('sample-images/polished-tray.jpg').resize(1080, 720));
});

afterAll(async () => {
  await served.close();
  await videos.clear();
});

async function expectSaid({ page, errors, close }: WatchedPage, trouble: keyof typeof camera.troubles) {
  await page.getByRole('status').getByText(camera.troubles[trouble]).waitFor();
  expect(await page.getByRole('button', { name: 'Take the photo' }).count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Use the device’s own camera' }).count()).toBe(1);
  expect(errors).toEqual([]);
  await close();
}

it('denied: the browser lets no page use the camera', async () => {
  await expectSaid(await openWithCamera(served.url, 'denied', PHONE), 'denied');
});

it('no-camera: the device has none', async () => {
  await expectSaid(await openWithCamera(served.url, 'none', PHONE), 'no-camera');
});

it('not-offered: the browser gives pages no camera', async () => {
  const watched = await openWithCamera(served.url, video, PHONE);
  await watched.page.addInitScript(() =>
    Object.defineProperty(navigator, 'mediaDevices', { value: undefined, configurable: true }),
  );
  await watched.page.reload();
  await expectSaid(watched, 'not-offered');
});

// No second program that holds the camera, and no broken one, can be had in a test: the browser's answer is given instead.
it.each([
  ['in-use', 'NotReadableError'],
  ['broken', 'TypeError'],
] as const)('%s: the browser answers %s', async (trouble, name) => {
  const watched = await openWithCamera(served.url, video, PHONE);
  await watched.page.addInitScript((answer) => {
    navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('No.', answer));
  }, name);
  await watched.page.reload();
  await expectSaid(watched, trouble);
});

it('lost: the camera ends while its picture is shown', async () => {
  const watched = await openWithCamera(served.url, video, PHONE);
  await expect.poll(() => trackStates(watched.page), { timeout: 10_000 }).toContain('live');
  await watched.page.evaluate(() => {
    const streams = (window as unknown as { openedStreams: MediaStream[] }).openedStreams;
    const tracks = streams.flatMap((stream) => stream.getVideoTracks());
    for (const track of tracks.filter(({ readyState }) => readyState === 'live'))
      track.dispatchEvent(new Event('ended'));
  });
  await expectSaid(watched, 'lost');
});
