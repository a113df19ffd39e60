import { bigEndianAt } from '../image/bytes';
import { isFrameMarker, readJpegHeader } from '../image/readJpegHeader';
import { BundleError } from './bundleError';
import { BUNDLE_LIMITS, pictureOf } from './bundleFormat';

/**
 * Checks that a picture has a key for its name and begins as a JPEG does. Whether key and picture belong together cannot
 * be checked: the key is that of the original file, which is not kept.
 *
 * @param bytes - Its size.
 * @param start - Three bytes of it or more.
 * @throws BundleError `bad-photo` or `too-large`.
 * @see ITU-T T.81, annex B: a file begins with the marker SOI, FF D8, and another marker.
 */
export function checkPicture(name: string, bytes: number, start: Uint8Array): void {
  const [a, b, c] = start;
  if (!pictureOf(name)) throw new BundleError('bad-photo', (parts) => parts.misnamed(name));
  if (bytes > BUNDLE_LIMITS.pictureBytes) throw new BundleError('too-large', (parts) => parts.about(name));
  if (a !== 0xff || b !== 0xd8 || c !== 0xff)
    throw new BundleError('bad-photo', (parts) => parts.noJpeg(name));
}

/**
 * Checks that a picture does not claim more pixels than its kind has, which a list of a few would fill memory with.
 *
 * @param bytes - All of it.
 * @throws BundleError `too-large`.
 */
export function checkPixels(name: string, bytes: Uint8Array): void {
  const kind = pictureOf(name)?.kind ?? 'photo';
  const isTooLarge = (size: { readonly widthPx: number; readonly heightPx: number } | null) =>
    size !== null && size.widthPx * size.heightPx > BUNDLE_LIMITS.pixels[kind];
  const { size } = readJpegHeader(bytes);
  // Decoders pass over what does not belong between segments: any frame header counts where the walk ends before one.
  const found = size ? [size] : framesIn(bytes);
  if (found.some(isTooLarge)) throw new BundleError('too-large', (parts) => parts.about(name));
}

/** Sizes that anything says that looks like the header of a frame. */
function framesIn(bytes: Uint8Array) {
  const sizes: { widthPx: number; heightPx: number }[] = [];
  for (let at = bytes.indexOf(0xff); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const isFrame = isFrameMarker(bytes[at + 1] ?? 0) && at + 9 <= bytes.length;
    if (isFrame)
      sizes.push({ heightPx: bigEndianAt(bytes, at + 5, 2), widthPx: bigEndianAt(bytes, at + 7, 2) });
  }
  return sizes;
}
