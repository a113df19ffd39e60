import { BundleError } from './bundleError';
import { BUNDLE_LIMITS, pictureOf } from './bundleFormat';

/**
 * Checks that a picture has a key for its name and begins as a JPEG does. Whether key and picture belong together cannot
 * be checked: the key is that of the original file, which is not kept.
 *
 * @throws BundleError `bad-photo` or `too-large`.
 * @see ITU-T T.81, annex B: a file begins with the marker SOI, FF D8, and another marker.
 */
export async function checkPicture(name: string, content: Blob): Promise<void> {
  if (!pictureOf(name)) throw new BundleError('bad-photo', `${name} is not named by 64 hexadecimal digits.`);
  if (content.size > BUNDLE_LIMITS.pictureBytes) throw new BundleError('too-large', `It is about ${name}.`);
  const [a, b, c] = new Uint8Array(await content.slice(0, 3).arrayBuffer());
  if (a !== 0xff || b !== 0xd8 || c !== 0xff) throw new BundleError('bad-photo', `${name} is no JPEG.`);
}
