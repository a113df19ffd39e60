import { asciiAt, littleEndianAt } from './bytes';
import type { PhotoHeader } from './photoHeader';

/**
 * Reads a WebP's size and compares the length it states with that of the file.
 *
 * @see RFC 9649, sections 2.4 to 2.7 (container), RFC 6386, section 9.1 (lossy frame header).
 */
export function readWebpHeader(bytes: Uint8Array): PhotoHeader {
  return { size: sizeOf(bytes), isWhole: bytes.length >= 8 + littleEndianAt(bytes, 4, 4) };
}

function sizeOf(bytes: Uint8Array): PhotoHeader['size'] {
  if (bytes.length < 30) return null;
  switch (asciiAt(bytes, 12, 4)) {
    case 'VP8X':
      return { widthPx: 1 + littleEndianAt(bytes, 24, 3), heightPx: 1 + littleEndianAt(bytes, 27, 3) };
    case 'VP8L': {
      const bits = littleEndianAt(bytes, 21, 4);
      return { widthPx: 1 + (bits % 0x4000), heightPx: 1 + (Math.floor(bits / 0x4000) % 0x4000) };
    }
    case 'VP8 ':
      return {
        widthPx: littleEndianAt(bytes, 26, 2) % 0x4000,
        heightPx: littleEndianAt(bytes, 28, 2) % 0x4000,
      };
    default:
      return null;
  }
}
