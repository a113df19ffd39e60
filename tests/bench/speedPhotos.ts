import { readFileSync } from 'node:fs';
import { mkdtemp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';

/** The sample photo that is brought to every size: 12 stones and a ball, path-traced. */
const TRAY = 'sample-images/polished-tray';
const QUALITY = 92;
const MANY = { megapixels: 12, stones: 40 };
/** Side of the patch that hides a ball and its shadow, radii. */
const HIDDEN = 3.4;

/** A test photo, and what it is called in the table. */
export interface SpeedPhoto {
  readonly path: string;
  readonly name: string;
}

/** Makes an empty folder for test photos. */
export const photoFolder = () => mkdtemp(join(tmpdir(), 'speed-'));

/**
 * Brings the sample tray to a size.
 *
 * @param megapixels - Size of the photo, 10⁶ pixels.
 * @param folder - Where the JPEG goes.
 */
export async function trayOf(megapixels: number, folder: string): Promise<SpeedPhoto> {
  const { width, height } = await sharp(`${TRAY}.jpg`).metadata();
  const grow = Math.sqrt((megapixels * 1e6) / (width * height));
  const path = join(folder, `tray-${megapixels}.jpg`);
  await sharp(`${TRAY}.jpg`)
    .resize(Math.round(width * grow), Math.round(height * grow), { kernel: 'cubic' })
    .jpeg({ quality: QUALITY })
    .toFile(path);
  return { path, name: `${megapixels} MP` };
}

/**
 * Lays four of the sample tray side by side, the ball in the first only: a tray of over 40 stones whose lamp stands
 * right for all of them. How far the figures are right does not matter here.
 *
 * @param folder - Where the JPEG goes.
 */
export async function manyStones(folder: string): Promise<SpeedPhoto> {
  const { ball } = JSON.parse(readFileSync(`${TRAY}.json`, 'utf8'));
  const whole = sharp(`${TRAY}.jpg`).removeAlpha();
  const { width, height } = await whole.metadata();
  const side = Math.round(HIDDEN * ball.radiusPx);
  const hidden = {
    left: Math.round(ball.column - side / 2),
    top: Math.max(0, Math.round(ball.row - side / 2)),
  };
  // The tray along the photo's upper edge stands for the tray under the ball.
  const { dominant } = await sharp(`${TRAY}.jpg`).extract({ left: 0, top: 0, width: 60, height: 60 }).stats();
  const [r, g, b] = [dominant.r, dominant.g, dominant.b];
  const cover = await sharp({ create: { width: side, height: side, channels: 3, background: { r, g, b } } })
    .png()
    .toBuffer();
  const bare = await whole
    .clone()
    .composite([{ input: cover, ...hidden }])
    .png()
    .toBuffer();
  const empty = {
    create: { width: 2 * width, height: 2 * height, channels: 3, background: '#000' },
  } as const;
  const four = await sharp(empty)
    .composite([
      { input: await whole.png().toBuffer(), left: 0, top: 0 },
      { input: bare, left: width, top: 0 },
      { input: bare, left: 0, top: height },
      { input: bare, left: width, top: height },
    ])
    .png()
    .toBuffer();
  const grow = Math.sqrt((MANY.megapixels * 1e6) / (4 * width * height));
  const path = join(folder, 'many.jpg');
  await sharp(four)
    .resize(Math.round(2 * width * grow))
    .jpeg({ quality: QUALITY })
    .toFile(path);
  return { path, name: `${MANY.megapixels} MP, ${MANY.stones} stones` };
}
