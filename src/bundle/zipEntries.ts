import { inflateSync } from 'fflate';
import { BundleError, shown } from './bundleError';
import { BUNDLE_LIMITS } from './bundleFormat';
import { crc32 } from './crc32';

/** One file of a zip, as the zip's directory describes it. */
export interface ZipEntry {
  readonly name: string;
  /** Size that the directory claims, before and after unpacking. */
  readonly packedBytes: number;
  readonly bytes: number;
  readonly method: number;
  readonly crc: number;
  /** Where its own header lies. */
  readonly headerAt: number;
}

const END = { signature: 0x06054b50, bytes: 22, mostComment: 0xffff };
const ENTRY = { signature: 0x02014b50, bytes: 46 };
const LOCAL = { signature: 0x04034b50, bytes: 30 };
/** Encrypted; patched data; strongly encrypted; directory masked. */
const UNUSUAL_FLAGS = 0x0001 | 0x0020 | 0x0040 | 0x2000;
/** Packing makes a file larger by no more than this part: five bytes for each block, which hold far more. */
const MOST_GROWN = 100;
/** Says that the number stands in the 64-bit extension. */
const [ELSEWHERE_16, ELSEWHERE_32] = [0xffff, 0xffffffff];

/**
 * Reads a zip's directory: nothing is unpacked.
 *
 * @throws BundleError `not-a-zip`, `damaged`, `locked` or `too-large`.
 * @see PKWARE APPNOTE 6.3, 4.3.12 and 4.3.16.
 */
export async function zipEntries(zip: Blob): Promise<ZipEntry[]> {
  if (zip.size > BUNDLE_LIMITS.fileBytes) throw new BundleError('too-large');
  const tailAt = Math.max(0, zip.size - END.bytes - END.mostComment);
  const tail = await bytesOf(zip, tailAt, zip.size);
  const at = endIn(tail);
  if (at === null) throw new BundleError('not-a-zip');
  const [count, directoryBytes, directoryAt] = [
    uint(tail, at + 10, 2),
    uint(tail, at + 12, 4),
    uint(tail, at + 16, 4),
  ];
  if (count === ELSEWHERE_16 || directoryAt === ELSEWHERE_32) throw new BundleError('too-large');
  if (directoryAt + directoryBytes > tailAt + at)
    throw new BundleError('damaged', 'Its list of files is cut short.');
  return entriesIn(await bytesOf(zip, directoryAt, directoryAt + directoryBytes), count);
}

/** The last place where an end record with a comment that fits can lie; null without one. */
function endIn(tail: Uint8Array): number | null {
  for (let at = tail.length - END.bytes; at >= 0; at--) {
    if (uint(tail, at, 4) === END.signature && at + END.bytes + uint(tail, at + 20, 2) <= tail.length)
      return at;
  }
  return null;
}

function entriesIn(directory: Uint8Array, count: number): ZipEntry[] {
  const entries: ZipEntry[] = [];
  let at = 0;
  for (let i = 0; i < count; i++) {
    const nameAt = at + ENTRY.bytes;
    if (nameAt > directory.length || uint(directory, at, 4) !== ENTRY.signature) {
      throw new BundleError('damaged', 'Its list of files is broken.');
    }
    const [nameBytes, extraBytes, commentBytes] = [28, 30, 32].map((place) => uint(directory, at + place, 2));
    const name = new TextDecoder().decode(directory.subarray(nameAt, nameAt + nameBytes!));
    const method = uint(directory, at + 10, 2);
    const isUnusual = (uint(directory, at + 8, 2) & UNUSUAL_FLAGS) !== 0 || (method !== 0 && method !== 8);
    if (isUnusual) throw new BundleError('locked', `It is about ${shown(name)}.`);
    const [crc, packedBytes, bytes] = [16, 20, 24].map((place) => uint(directory, at + place, 4));
    const headerAt = uint(directory, at + 42, 4);
    if ([packedBytes, bytes, headerAt].includes(ELSEWHERE_32)) throw new BundleError('too-large');
    entries.push({ name, method, crc: crc!, packedBytes: packedBytes!, bytes: bytes!, headerAt });
    at = nameAt + nameBytes! + extraBytes! + commentBytes!;
  }
  return entries;
}

/**
 * Unpacks one file of a zip.
 *
 * @returns Exactly as many bytes as the directory claims: more are never unpacked, and fewer are refused.
 * @throws BundleError `damaged` when the file is cut short, or is not what its checksum says.
 */
export async function unpacked(zip: Blob, entry: ZipEntry): Promise<Uint8Array<ArrayBuffer>> {
  const content = await packedPart(zip, entry);
  if (content.size > entry.bytes + entry.bytes / MOST_GROWN + LOCAL.bytes) throw damaged(entry);
  const packed = await bytesOf(content, 0, content.size);
  const bytes = entry.method === 0 ? packed : inflated(packed, entry);
  if (bytes.length !== entry.bytes || crc32(bytes) !== entry.crc) throw damaged(entry);
  return bytes;
}

/**
 * The part of a zip in which a file lies packed, without reading it.
 *
 * @throws BundleError `damaged` when there is no such part.
 */
export async function packedPart(zip: Blob, entry: ZipEntry): Promise<Blob> {
  const header = await bytesOf(zip, entry.headerAt, entry.headerAt + LOCAL.bytes);
  if (header.length < LOCAL.bytes || uint(header, 0, 4) !== LOCAL.signature) throw damaged(entry);
  const from = entry.headerAt + LOCAL.bytes + uint(header, 26, 2) + uint(header, 28, 2);
  if (from + entry.packedBytes > zip.size) throw damaged(entry);
  return zip.slice(from, from + entry.packedBytes);
}

function inflated(packed: Uint8Array, entry: ZipEntry): Uint8Array<ArrayBuffer> {
  try {
    // With room for one byte more, so that a file that unpacks to more than it claims does not pass for one that does not.
    return inflateSync(packed, { out: new Uint8Array(entry.bytes + 1) });
  } catch {
    throw damaged(entry);
  }
}

const damaged = ({ name }: ZipEntry) => new BundleError('damaged', `It is about ${shown(name)}.`);

async function bytesOf(blob: Blob, from: number, to: number): Promise<Uint8Array<ArrayBuffer>> {
  try {
    return new Uint8Array(await blob.slice(from, to).arrayBuffer());
  } catch {
    throw new BundleError('unreadable');
  }
}

/** Unsigned number, least significant byte first. */
function uint(bytes: Uint8Array, at: number, size: number): number {
  let value = 0;
  for (let i = size - 1; i >= 0; i--) value = value * 256 + (bytes[at + i] ?? 0);
  return value;
}
