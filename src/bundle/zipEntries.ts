import { Inflate } from 'fflate';
import { paceOf } from '../progress/pace';
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
/** Read at a time, and unpacked at a time, which makes up to a thousand times as much of it, bytes. */
const [READ_BYTES, UNPACKED_BYTES] = [2 ** 20, 2 ** 14];
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
    throw new BundleError('damaged', (parts) => parts.listCutShort);
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
      throw new BundleError('damaged', (parts) => parts.listBroken);
    }
    const [nameBytes, extraBytes, commentBytes] = [28, 30, 32].map((place) => uint(directory, at + place, 2));
    const name = nameIn(directory.subarray(nameAt, nameAt + nameBytes!));
    const method = uint(directory, at + 10, 2);
    if (isUnusual(uint(directory, at + 8, 2), method)) throw locked(name);
    const [crc, packedBytes, bytes] = [16, 20, 24].map((place) => uint(directory, at + place, 4));
    const headerAt = uint(directory, at + 42, 4);
    if ([packedBytes, bytes, headerAt].includes(ELSEWHERE_32)) throw new BundleError('too-large');
    entries.push({ name, method, crc: crc!, packedBytes: packedBytes!, bytes: bytes!, headerAt });
    at = nameAt + nameBytes! + extraBytes! + commentBytes!;
  }
  return entries;
}

const isUnusual = (flags: number, method: number) =>
  (flags & UNUSUAL_FLAGS) !== 0 || (method !== 0 && method !== 8);

/** A byte order mark is a part of the name: else two names could be one. */
const nameIn = (bytes: Uint8Array) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);

/**
 * Unpacks one file of a zip.
 *
 * @returns Exactly as many bytes as the directory claims: unpacking stops with the first that is too many, and fewer are
 *   refused.
 * @throws BundleError `damaged` when the file is cut short, or is not what its checksum says.
 * @throws What `pace` throws.
 */
export async function unpacked(
  zip: Blob,
  entry: ZipEntry,
  pace = paceOf(),
): Promise<Uint8Array<ArrayBuffer>> {
  return unpackedPart(await packedPart(zip, entry), entry, pace);
}

/**
 * As `unpacked`, of the part in which the file lies packed.
 *
 * @param content - As `packedPart` gives it.
 * @throws As `unpacked` does.
 */
export async function unpackedPart(
  content: Blob,
  entry: ZipEntry,
  pace = paceOf(),
): Promise<Uint8Array<ArrayBuffer>> {
  if (content.size > entry.bytes + entry.bytes / MOST_GROWN + LOCAL.bytes) throw damaged(entry);
  const bytes = new Uint8Array(entry.bytes);
  let [filled, crc] = [0, 0];
  const unpack = unpackerOf(entry, (part) => {
    if (filled + part.length > bytes.length) throw damaged(entry);
    bytes.set(part, filled);
    filled += part.length;
    crc = crc32(part, crc);
  });
  for (let from = 0; from < content.size; from += READ_BYTES) {
    const read = await bytesOf(content, from, from + READ_BYTES);
    for (let at = 0; at < read.length; at += UNPACKED_BYTES) {
      unpack(read.subarray(at, at + UNPACKED_BYTES), from + at + UNPACKED_BYTES >= content.size);
      await pace.at(Math.min(1, (from + at + UNPACKED_BYTES) / content.size));
    }
  }
  if (filled !== bytes.length || crc !== entry.crc) throw damaged(entry);
  return bytes;
}

/** Takes a file piece by piece as it is packed, and gives it on as it was. */
function unpackerOf(entry: ZipEntry, give: (part: Uint8Array) => void) {
  if (entry.method === 0) return give;
  const inflate = new Inflate(give);
  return (part: Uint8Array, isLast: boolean) => {
    try {
      inflate.push(part, isLast);
    } catch {
      throw damaged(entry);
    }
  };
}

/**
 * The part of a zip in which a file lies packed, without reading it. Sizes and checksum are the directory's; of the
 * file's own header only name, method and flags count, which must be no other than there.
 *
 * @throws BundleError `damaged` when there is no such part, or its own header is about another file; `locked`.
 */
export async function packedPart(zip: Blob, entry: ZipEntry): Promise<Blob> {
  const nameAt = entry.headerAt + LOCAL.bytes;
  const header = await bytesOf(zip, entry.headerAt, nameAt);
  if (header.length < LOCAL.bytes || uint(header, 0, 4) !== LOCAL.signature) throw damaged(entry);
  const [nameBytes, extraBytes] = [uint(header, 26, 2), uint(header, 28, 2)];
  const name = nameIn(await bytesOf(zip, nameAt, nameAt + nameBytes));
  if (name !== entry.name || uint(header, 8, 2) !== entry.method) throw damaged(entry);
  if (isUnusual(uint(header, 6, 2), entry.method)) throw locked(name);
  const from = nameAt + nameBytes + extraBytes;
  if (from + entry.packedBytes > zip.size) throw damaged(entry);
  return zip.slice(from, from + entry.packedBytes);
}

/**
 * Refuses files that lie in each other: a few bytes that are unpacked again and again under many names.
 *
 * @throws BundleError `damaged`.
 */
export function checkApart(entries: readonly ZipEntry[]): void {
  const inOrder = entries.toSorted((a, b) => a.headerAt - b.headerAt);
  for (const [i, entry] of inOrder.entries()) {
    const next = inOrder[i + 1];
    // What a name and an extra field take comes on top; they are read with the file itself.
    if (next && entry.headerAt + LOCAL.bytes + entry.packedBytes > next.headerAt) throw damaged(entry);
  }
}

const locked = (name: string) => new BundleError('locked', (parts) => parts.about(shown(name)));

const damaged = ({ name }: ZipEntry) => new BundleError('damaged', (parts) => parts.about(shown(name)));

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
