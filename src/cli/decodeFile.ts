import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { checkPhotoFile } from '../image/checkPhotoFile';
import { checkSize } from '../image/checkSize';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { photoFormat } from '../image/photoFormat';
import { readExposure } from '../image/readExposure';
import { readFocalLength } from '../image/readFocalLength';
import { readJpegQuality } from '../image/readJpegQuality';
import { decodeHeic } from '../vision/decodeHeic';

/**
 * Decodes a photo file in Node: upright, in sRGB.
 *
 * @throws Refusal if the file is not a whole photo of a usable size.
 */
export async function decodeFile(path: string): Promise<Photo> {
  const bytes = await readFile(path);
  checkPhotoFile(bytes);
  const isHeic = photoFormat(bytes) === 'heic';
  const pixels = isHeic ? await decodeHeic(bytes) : await decodeWithSharp(bytes, path);
  const [focalLength35Mm, exposure] = await Promise.all([readFocalLength(bytes), readExposure(bytes)]);
  return { ...pixels, focalLength35Mm, exposure, jpegQuality: readJpegQuality(bytes) };
}

async function decodeWithSharp(bytes: Uint8Array, path: string): Promise<Photo> {
  const { data, info } = await sharp(bytes, { failOn: 'error', limitInputPixels: false })
    .rotate()
    .toColorspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true })
    .catch((error: unknown) => {
      throw refusalOf(error);
    });
  checkSize(info.width, info.height);
  if (info.channels !== 4) throw new Error(`${path} decoded to ${info.channels} channels instead of 4.`);
  const rgba = new Uint8ClampedArray(data.buffer as ArrayBuffer, data.byteOffset, data.length);
  return { widthPx: info.width, heightPx: info.height, rgba };
}

function refusalOf(error: unknown): Refusal {
  const isCutShort = /premature end|truncated|end of stream|read error/i.test(String(error));
  return new Refusal(isCutShort ? 'truncated' : 'not-an-image');
}
