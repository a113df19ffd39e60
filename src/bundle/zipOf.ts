import { deflateSync } from 'fflate';
import { BundleError } from './bundleError';
import { BUNDLE_LIMITS } from './bundleFormat';
import { crc32 } from './crc32';

/** A file to pack. */
export interface ZipFile {
  /** ASCII, parts parted by slashes. */
  readonly name: string;
  readonly content: Blob;
  /** True for text; pictures are packed already. */
  readonly isDeflated: boolean;
}

const STORED = 0;
const DEFLATED = 8;
/** Midnight of January 1, 1980, the first day a zip can name: the same files always give the same bytes. */
const FIRST_DAY = 0x21;

/**
 * Packs files into a zip. Only one file at a time is held in memory beside what `Blob` holds itself.
 *
 * @throws BundleError `too-large` beyond what a zip without its 64-bit extension can hold.
 * @see PKWARE APPNOTE 6.3, 4.3 (order of parts) and 4.4 (fields).
 */
export async function zipOf(files: Iterable<ZipFile>): Promise<Blob> {
  const parts: BlobPart[] = [];
  const directory: BlobPart[] = [];
  let [count, offset, directoryBytes] = [0, 0, 0];
  for (const { name, content, isDeflated } of files) {
    const bytes = new Uint8Array(await content.arrayBuffer());
    const packed = isDeflated ? deflateSync(bytes, { level: 6 }) : null;
    const packedBytes = packed?.length ?? bytes.length;
    const fields = fieldsOf(packed ? DEFLATED : STORED, crc32(bytes), packedBytes, bytes.length, name);
    const letters = new TextEncoder().encode(name);
    const local = numbers([4, 0x04034b50], ...fields);
    const entry = numbers(
      ...[[4, 0x02014b50] as const, [2, 20] as const, ...fields],
      ...[
        [2, 0],
        [2, 0],
        [2, 0],
        [4, 0],
        [4, offset],
      ].map(([size, value]) => [size!, value!] as const),
    );
    parts.push(local, letters, packed ?? content);
    directory.push(entry, letters);
    offset += local.length + letters.length + packedBytes;
    directoryBytes += entry.length + letters.length;
    count++;
    const { fileBytes, entries } = BUNDLE_LIMITS;
    if (count > entries || offset + directoryBytes + 22 > fileBytes) throw new BundleError('too-large');
  }
  const end = numbers(
    [4, 0x06054b50],
    [4, 0],
    [2, count],
    [2, count],
    [4, directoryBytes],
    [4, offset],
    [2, 0],
  );
  return new Blob([...parts, ...directory, end], { type: 'application/zip' });
}

type Field = readonly [bytes: number, value: number];

/** The fields that an entry's two headers share, in their order. */
function fieldsOf(method: number, crc: number, packedBytes: number, bytes: number, name: string): Field[] {
  return [
    ...([
      [2, 20],
      [2, 0],
      [2, method],
      [2, 0],
      [2, FIRST_DAY],
    ] as const),
    ...([
      [4, crc],
      [4, packedBytes],
      [4, bytes],
      [2, name.length],
      [2, 0],
    ] as const),
  ];
}

/** Numbers one after the other, least significant byte first. */
function numbers(...fields: readonly Field[]): Uint8Array<ArrayBuffer> {
  const bytes: number[] = [];
  for (const [size, value] of fields) {
    for (let i = 0; i < size; i++) bytes.push(Math.floor(value / 256 ** i) % 256);
  }
  return Uint8Array.from(bytes);
}
