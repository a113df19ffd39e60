import { bigEndianAt } from './bytes';
import type { PhotoHeader } from './photoHeader';

const START_OF_SCAN = 0xda;
const END_OF_IMAGE = 0xd9;
/** Markers in the range of frame headers that are not one: Huffman tables, extension, arithmetic conditioning. */
const NOT_FRAMES = [0xc4, 0xc8, 0xcc];

/**
 * Walks a JPEG's segments up to its pixels, then looks for the end marker, which pixels cannot hold.
 *
 * Whatever follows the end marker (a second picture, a clip, padding) does not matter.
 *
 * @see ITU-T T.81, annex B.
 */
export function readJpegHeader(bytes: Uint8Array): PhotoHeader {
  let size: PhotoHeader['size'] = null;
  let at = 2;
  while (at + 4 <= bytes.length) {
    const marker = bytes[at + 1] ?? 0;
    if (bytes[at] !== 0xff) return { size, isWhole: true };
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (isFrameMarker(marker))
      size = { heightPx: bigEndianAt(bytes, at + 5, 2), widthPx: bigEndianAt(bytes, at + 7, 2) };
    if (marker === START_OF_SCAN) return { size, isWhole: hasEnd(bytes, at) };
    at += 2 + bigEndianAt(bytes, at + 2, 2);
  }
  return { size, isWhole: false };
}

/** True for the markers SOF, which a picture's size follows; ITU-T T.81, table B.1. */
export function isFrameMarker(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && !NOT_FRAMES.includes(marker);
}

function hasEnd(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    if (bytes[at + 1] === END_OF_IMAGE) return true;
  }
  return false;
}
