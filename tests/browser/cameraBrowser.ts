import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContextOptions, chromium, type Page } from 'playwright';
import type { Sharp } from 'sharp';
import { CHROMIUM_SWITCHES, findChromium } from '../../.config/chromium.mjs';

/** A page that sees a sample photo through its camera. */
export interface CameraPage {
  readonly page: Page;
  readonly errors: readonly string[];
  close(): Promise<void>;
}

/** How the browser's camera behaves: shows a picture, is forbidden, or is not there. */
export type FakeCamera = { readonly y4m: string } | 'denied' | 'none';

/**
 * Opens an address in a Chromium with a fake camera. Every stream the page opens is kept in `window.openedStreams`.
 *
 * @param url - Address of the page.
 * @param camera - What its camera does.
 */
export async function openWithCamera(
  url: string,
  camera: FakeCamera,
  options: BrowserContextOptions = {},
): Promise<CameraPage> {
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: [...CHROMIUM_SWITCHES, ...switchesFor(camera)],
    ...(executablePath ? { executablePath } : {}),
  });
  const page = await (await browser.newContext(options)).newPage();
  const errors: string[] = [];
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  page.on('pageerror', (error) => errors.push(error.message));
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
  await page.goto(url);
  return { page, errors, close: () => browser.close() };
}

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
