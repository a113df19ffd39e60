import sharp from 'sharp';
import type { Photo } from '../../src/image/photo';
import type { Mask } from '../../src/image/raster';

/** Reads a picture of any size, smaller ones than a photo to be graded as well; transparency becomes black. */
export async function realPicture(path: string): Promise<Photo> {
  const { data, info } = await sharp(path)
    .flatten({ background: '#000' })
    .toColorspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  const rgba = new Uint8ClampedArray(data.buffer as ArrayBuffer, data.byteOffset, data.length);
  return { widthPx: info.width, heightPx: info.height, rgba };
}

/** Pixels whose brightest channel is above a level, 0 to 255. */
export function brighterThan({ widthPx, heightPx, rgba }: Photo, level: number): Mask {
  const data = new Uint8Array(widthPx * heightPx);
  for (let i = 0; i < data.length; i++) {
    data[i] = Math.max(rgba[4 * i]!, rgba[4 * i + 1]!, rgba[4 * i + 2]!) > level ? 1 : 0;
  }
  return { width: widthPx, height: heightPx, data };
}

/** Intersection over union of two masks of one size. */
export function overlapOf(a: Mask, b: Mask): number {
  let both = 0;
  let either = 0;
  for (let i = 0; i < a.data.length; i++) {
    both += a.data[i]! & b.data[i]!;
    either += a.data[i]! | b.data[i]!;
  }
  return either === 0 ? 0 : both / either;
}
