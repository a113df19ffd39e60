import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { checkPhotoFile } from '../image/checkPhotoFile';
import { checkSize } from '../image/checkSize';
import { Refusal } from '../image/notice';
import type { Photo } from '../image/photo';
import { readExposure } from '../image/readExposure';
import { readFocalLength } from '../image/readFocalLength';
import { readJpegQuality } from '../image/readJpegQuality';

/**
 * Decodes a photo file in Node: upright (EXIF), in sRGB.
 *
 * @throws Refusal if the file is not a whole photo of a usable size.
 */
export async function decodeFile(path: string): Promise<Photo> {
  const bytes = await readFile(path);
  checkPhotoFile(bytes);
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
  const [focalLength35Mm, exposure] = await Promise.all([readFocalLength(bytes), readExposure(bytes)]);
  return {
    widthPx: info.width,
    heightPx: info.height,
    rgba,
    focalLength35Mm,
    exposure,
    jpegQuality: readJpegQuality(bytes),
  };
}

function refusalOf(error: unknown): Refusal {
  const isCutShort = /premature end|truncated|end of stream|read error/i.test(String(error));
  return new Refusal(isCutShort ? 'truncated' : 'not-an-image');
}
