import { crc32 } from 'node:zlib';
import type { PhotoFormat } from '../../src/image/photoFormat';

const latin = (bytes: Uint8Array, at: number, length: number) =>
  Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('latin1', at, at + length);

/**
 * Mends what guards a mutated file, so that the mutation itself reaches the decoder: checksums of a PNG's chunks, the
 * length of a WebP, the end marker of a JPEG, the last box of an AVIF or HEIC. What is too broken stays as it is.
 */
export function repaired(kind: PhotoFormat, mutated: Uint8Array): Uint8Array {
  const bytes = Buffer.from(mutated);
  if (kind === 'png') return repairedPng(bytes);
  if (kind === 'jpeg') return Buffer.concat([bytes, Buffer.from([0xff, 0xd9])]);
  if (kind === 'webp') {
    if (bytes.length >= 8) bytes.writeUInt32LE(bytes.length - 8, 4);
    return bytes;
  }
  return repairedBoxes(bytes);
}

/** ISO/IEC 15948, clauses 5.3 and 5.5. */
function repairedPng(bytes: Buffer): Uint8Array {
  let at = 8;
  while (at + 12 <= bytes.length) {
    const end = at + 8 + bytes.readUInt32BE(at);
    if (end + 4 > bytes.length) break;
    bytes.writeUInt32BE(crc32(bytes.subarray(at + 4, end)), end);
    if (latin(bytes, at + 4, 4) === 'IEND') return bytes;
    at = end + 4;
  }
  return Buffer.concat([bytes.subarray(0, at), Buffer.from('0000000049454e44ae426082', 'hex')]);
}

/** ISO/IEC 14496-12, section 4.2: the box that reaches beyond the end ends there. */
function repairedBoxes(bytes: Buffer): Uint8Array {
  let at = 0;
  while (at + 8 <= bytes.length) {
    const size = bytes.readUInt32BE(at);
    if (size < 8) break;
    if (at + size > bytes.length) bytes.writeUInt32BE(bytes.length - at, at);
    at += size;
  }
  return bytes;
}

/** Places of the fields that say how wide and high a picture is, and how many bytes each takes. */
export function sizeFields(kind: PhotoFormat, bytes: Uint8Array): { at: number; length: number }[] {
  const fields: { at: number; length: number }[] = [];
  if (kind === 'png') fields.push({ at: 16, length: 4 }, { at: 20, length: 4 });
  if (kind === 'webp') {
    const form = latin(bytes, 12, 4);
    if (form === 'VP8X') fields.push({ at: 24, length: 3 }, { at: 27, length: 3 });
    if (form === 'VP8 ') fields.push({ at: 26, length: 2 }, { at: 28, length: 2 });
    if (form === 'VP8L') fields.push({ at: 21, length: 4 });
  }
  for (let at = 2; at + 9 < Math.min(bytes.length, 20_000); at++) {
    if (kind === 'jpeg' && bytes[at] === 0xff && [0xc0, 0xc2].includes(bytes[at + 1]!))
      fields.push({ at: at + 5, length: 2 }, { at: at + 7, length: 2 });
    if ((kind === 'avif' || kind === 'heic') && latin(bytes, at, 4) === 'ispe')
      fields.push({ at: at + 8, length: 4 }, { at: at + 12, length: 4 });
  }
  return fields;
}
