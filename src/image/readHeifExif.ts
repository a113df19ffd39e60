import { asciiAt, bigEndianAt } from './bytes';

/** Where items are listed: the boxes that do so come before the pixels. */
const HEADER_BYTES = 262_144;
/** Items looked at before giving up on a file. */
const MOST_ITEMS = 4096;

/**
 * The Exif data of an HEIC or AVIF file.
 *
 * @param bytes - The whole file.
 * @returns A TIFF structure, a view of the file; null when there is none.
 * @see ISO/IEC 14496-12, sections 8.11.3 (`iloc`) and 8.11.6 (`iinf`); ISO/IEC 23008-12, annex A.2.1 (Exif items).
 */
export function readHeifExif(bytes: Uint8Array): Uint8Array | null {
  const item = exifItem(bytes);
  const place = item === null ? null : placeOfItem(bytes, item);
  if (place === null) return null;
  const header = 4 + bigEndianAt(bytes, place.at, 4);
  const tiff = bytes.subarray(place.at + header, place.at + place.length);
  return header < place.length && /^(II\*\0|MM\0\*)$/.test(asciiAt(tiff, 0, 4)) ? tiff : null;
}

/** Number of the item of type `Exif`. */
function exifItem(bytes: Uint8Array): number | null {
  const end = Math.min(bytes.length, HEADER_BYTES);
  for (let at = 4; at < end; at++) {
    if (bytes[at] !== 0x69 || asciiAt(bytes, at, 4) !== 'infe') continue;
    const idBytes = bytes[at + 4] === 3 ? 4 : 2;
    if (asciiAt(bytes, at + 10 + idBytes, 4) === 'Exif') return bigEndianAt(bytes, at + 8, idBytes);
  }
  return null;
}

/** Where an item lies in the file, when it lies there in one piece. */
function placeOfItem(bytes: Uint8Array, item: number): { at: number; length: number } | null {
  const box = findIloc(bytes);
  if (box === null) return null;
  const version = bytes[box + 4] ?? 0;
  const sizes = bigEndianAt(bytes, box + 8, 2);
  const [offsetBytes, lengthBytes] = [(sizes >> 12) & 15, (sizes >> 8) & 15];
  const [baseBytes, indexBytes] = [(sizes >> 4) & 15, version === 0 ? 0 : sizes & 15];
  const wideBytes = version === 2 ? 4 : 2;
  let at = box + 10;
  const read = (size: number) => {
    at += size;
    return bigEndianAt(bytes, at - size, size);
  };
  const count = Math.min(read(wideBytes), MOST_ITEMS);
  for (let i = 0; i < count; i++) {
    const id = read(wideBytes);
    const isInFile = version === 0 || (read(2) & 15) === 0;
    read(2);
    const base = read(baseBytes);
    const extents = read(2);
    if (id === item) {
      read(indexBytes);
      const place = { at: base + read(offsetBytes), length: read(lengthBytes) };
      const isThere = isInFile && extents === 1 && place.at + place.length <= bytes.length;
      return isThere ? place : null;
    }
    at += extents * (indexBytes + offsetBytes + lengthBytes);
  }
  return null;
}

function findIloc(bytes: Uint8Array): number | null {
  const end = Math.min(bytes.length, HEADER_BYTES);
  for (let at = 4; at < end; at++) if (bytes[at] === 0x69 && asciiAt(bytes, at, 4) === 'iloc') return at;
  return null;
}
