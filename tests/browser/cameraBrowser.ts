import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContextOptions, chromium, type Page } from 'playwright';
import type { Sharp } from 'sharp';
import { CHROMIUM_SWITCHES, findChromium } from '../../.config/chromium.mjs';
import type { WatchedPage } from '../helpers/openPage';
import { watchPage } from '../helpers/watchPage';

/** A page that sees a sample photo through its camera. */
export type CameraPage = WatchedPage;

/** How the browser's camera behaves: shows a picture, is forbidden, or is not there. */
export type FakeCamera = { readonly y4m: string } | 'denied' | 'none';

export interface CameraOptions extends BrowserContextOptions {
  /**
   * Whether the camera lets exposure, focus and white balance be locked, as Chromium's fake one does not; all that is
   * asked of it is kept in `window.askedOfCamera`.
   */
  readonly canLock?: boolean;
  /** False for a browser that takes no stills, so that frames of the live picture are kept. */
  readonly stills?: boolean;
}

/**
 * Opens an address in a Chromium with a fake camera. Every stream the page opens is kept in `window.openedStreams`.
 *
 * @param url - Address of the page.
 * @param camera - What its camera does.
 */
export async function openWithCamera(
  url: string,
  camera: FakeCamera,
  { canLock = false, stills = true, ...options }: CameraOptions = {},
): Promise<CameraPage> {
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: [...CHROMIUM_SWITCHES, ...switchesFor(camera)],
    ...(executablePath ? { executablePath } : {}),
  });
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const { errors, foreignRequests, expectWalled } = await watchPage(context, page, url);
  await page.addInitScript(() => {
    const opened: MediaStream[] = [];
    Object.assign(window, { openedStreams: opened });
    const open = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    navigator.mediaDevices.getUserMedia = async (wish) => {
      const stream = await open(wish);
      opened.push(stream);
      return stream;
    };
  });
  if (!stills) await page.addInitScript(() => Reflect.deleteProperty(window, 'ImageCapture'));
  if (canLock) await page.addInitScript(letTracksLock);
  await page.goto(url);
  const close = async () => {
    await browser.close();
    expectWalled();
  };
  return { page, errors, foreignRequests, close };
}

/** Runs in the page: every track then offers what a good phone's camera does, and keeps what it is told. */
function letTracksLock(): void {
  const { getCapabilities, getSettings } = MediaStreamTrack.prototype;
  const asked: object[] = [];
  const now: object = { exposureTime: 120, iso: 100, colorTemperature: 4500, exposureCompensation: 0 };
  const modes = ['continuous', 'manual'];
  const offered = {
    exposureMode: modes,
    focusMode: modes,
    whiteBalanceMode: modes,
    exposureCompensation: { min: -2, max: 2, step: 0.5 },
    torch: true,
  };
  Object.assign(window, { askedOfCamera: asked });
  Object.assign(MediaStreamTrack.prototype, {
    getCapabilities(this: MediaStreamTrack) {
      return { ...getCapabilities.call(this), ...offered };
    },
    getSettings(this: MediaStreamTrack) {
      return { ...getSettings.call(this), ...now };
    },
    async applyConstraints({ advanced = [] }: MediaTrackConstraints) {
      asked.push(...advanced);
      Object.assign(now, ...advanced);
    },
  });
}

/** All settings asked of cameras that can lock. */
export const askedOfCamera = (page: Page): Promise<Record<string, unknown>[]> =>
  page.evaluate(() => (window as unknown as { askedOfCamera: Record<string, unknown>[] }).askedOfCamera);

function switchesFor(camera: FakeCamera): string[] {
  if (camera === 'denied') return ['--use-fake-device-for-media-stream'];
  if (camera === 'none')
    return ['--use-fake-device-for-media-stream=device-count=0', '--use-fake-ui-for-media-stream'];
  return [
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-video-capture=${camera.y4m}`,
  ];
}

/** States of all tracks of all streams that the page has opened. */
export const trackStates = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    (window as unknown as { openedStreams: MediaStream[] }).openedStreams.flatMap((stream) =>
      stream.getTracks().map(({ readyState }) => readyState),
    ),
  );

/** A folder for videos, deleted again by `clear`. */
export async function videoFolder() {
  const folder = await mkdtemp(join(tmpdir(), 'glintgrade-camera-'));
  return {
    /** Writes a picture as a video of one frame, see `y4mOf`. */
    write: async (name: string, picture: Sharp) => {
      const y4m = join(folder, `${name}.y4m`);
      await writeFile(y4m, await y4mOf(picture));
      return { y4m };
    },
    clear: () => rm(folder, { recursive: true }),
  };
}

/**
 * A picture of even sides as a YUV4MPEG2 video of one frame: 4:2:0, limited range (luma 16 to 235), as Chromium's fake
 * camera takes it.
 *
 * Weights and ranges: ITU-R BT.601-7, section 2.5.
 */
async function y4mOf(picture: Sharp): Promise<Buffer> {
  const { data: rgb, info } = await picture.removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const { width, height } = info;
  const luma = Buffer.alloc(width * height);
  const halfWidth = width / 2;
  const sums = [1, 2].map(() => new Float32Array((width * height) / 4));
  for (let i = 0; i < luma.length; i++) {
    const [red, green, blue] = [rgb[3 * i]! / 255, rgb[3 * i + 1]! / 255, rgb[3 * i + 2]! / 255];
    const y = 0.299 * red + 0.587 * green + 0.114 * blue;
    luma[i] = Math.round(16 + 219 * y);
    const at = Math.floor(Math.floor(i / width) / 2) * halfWidth + Math.floor((i % width) / 2);
    sums[0]![at]! += (blue - y) / 1.772 / 4;
    sums[1]![at]! += (red - y) / 1.402 / 4;
  }
  const chroma = sums.map((plane) => Buffer.from(plane.map((value) => Math.round(128 + 224 * value))));
  const head = `YUV4MPEG2 W${width} H${height} F30:1 Ip A1:1 C420jpeg\nFRAME\n`;
  return Buffer.concat([Buffer.from(head), luma, ...chroma]);
}
