import { asciiAt, bigEndianAt, littleEndianAt } from './bytes';

/**
 * The Exif data of a PNG or WebP file.
 *
 * @param bytes - The whole file.
 * @returns A TIFF structure, a view of the file; null when there is none, and for other files.
 * @see PNG Third Edition, section 11.3.4.5 (`eXIf`); RFC 9649, section 2.7.1.5 (`EXIF`).
 */
export function readChunkExif(bytes: Uint8Array): Uint8Array | null {
  const data = isWebp(bytes) ? webpExif(bytes) : pngExif(bytes);
  if (data === null) return null;
  // Some programs write the first bytes of a JPEG's segment before the TIFF structure.
  const tiff = asciiAt(data, 0, 6) === 'Exif\0\0' ? data.subarray(6) : data;
  return /^(II\*\0|MM\0\*)$/.test(asciiAt(tiff, 0, 4)) ? tiff : null;
}

/** Where the chunk `EXIF` of a WebP begins; null when there is none, and for other files. */
export function webpExifAt(bytes: Uint8Array): number | null {
  if (!isWebp(bytes)) return null;
  for (let at = 12; at + 8 <= bytes.length; ) {
    if (asciiAt(bytes, at, 4) === 'EXIF') return at;
    const length = littleEndianAt(bytes, at + 4, 4);
    at += 8 + length + (length % 2);
  }
  return null;
}

const isWebp = (bytes: Uint8Array) => asciiAt(bytes, 0, 4) === 'RIFF' && asciiAt(bytes, 8, 4) === 'WEBP';

function webpExif(bytes: Uint8Array): Uint8Array | null {
  const at = webpExifAt(bytes);
  return at === null ? null : bytes.subarray(at + 8, at + 8 + littleEndianAt(bytes, at + 4, 4));
}

function pngExif(bytes: Uint8Array): Uint8Array | null {
  if (asciiAt(bytes, 0, 4) !== '\x89PNG') return null;
  for (let at = 8; at + 12 <= bytes.length; at += 12 + bigEndianAt(bytes, at, 4)) {
    if (asciiAt(bytes, at + 4, 4) === 'eXIf')
      return bytes.subarray(at + 8, at + 8 + bigEndianAt(bytes, at, 4));
  }
  return null;
}
