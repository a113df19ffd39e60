import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import sharp, { type Sharp } from 'sharp';
import { photoFormat } from '../image/photoFormat';
import { KEPT } from '../journal/keptSize';
import type { KeptPhoto } from '../journal/openJournal';
import { decodeHeic } from '../vision/decodeHeic';

/**
 * A photo file at the size that a journal keeps, with its thumbnail, under the SHA-256 of the original.
 *
 * Both are upright and drawn anew: nothing of what the file says beside its pixels, such as where it was taken, goes on.
 */
export async function keptFile(path: string): Promise<KeptPhoto> {
  const bytes = await readFile(path);
  const key = createHash('sha256').update(bytes).digest('hex');
  const upright = await openUpright(bytes);
  const [photo, thumbnail] = [await jpegOf(upright, KEPT.photoPx), await jpegOf(upright, KEPT.thumbnailPx)];
  return { key, photo, thumbnail };
}

async function openUpright(bytes: Buffer): Promise<Sharp> {
  if (photoFormat(bytes) !== 'heic') return sharp(bytes, { limitInputPixels: false }).rotate();
  const { rgba, widthPx: width, heightPx: height } = await decodeHeic(bytes);
  return sharp(rgba, { raw: { width, height, channels: 4 }, limitInputPixels: false });
}

async function jpegOf(upright: Sharp, longestPx: number): Promise<Blob> {
  const box = { width: longestPx, height: longestPx, fit: 'inside', withoutEnlargement: true } as const;
  const jpeg = await upright
    .clone()
    .resize(box)
    .toColorspace('srgb')
    .jpeg({ quality: 100 * KEPT.quality })
    .toBuffer();
  return new Blob([new Uint8Array(jpeg)], { type: 'image/jpeg' });
}
