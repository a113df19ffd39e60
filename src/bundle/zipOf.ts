import { Deflate } from 'fflate';
import { type Pace, paceOf } from '../progress/pace';
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

/** Taken at a time, bytes: what is to be deflated takes a phone a few tens of milliseconds; a picture is mostly one piece. */
const PIECE_BYTES = { deflated: 2 ** 17, stored: 2 ** 20 } as const;
/** Deflating takes about so many times as long as summing (`npm run bench:bundle`). */
const DEFLATE_COST = 10;
const STORED = 0;
const DEFLATED = 8;
/** Midnight of January 1, 1980, the first day a zip can name: the same files always give the same bytes. */
const FIRST_DAY = 0x21;

/**
 * Packs files into a zip. Only a piece of one file at a time is held in memory beside what `Blob` holds itself.
 *
 * @throws BundleError `too-large` beyond what a zip without its 64-bit extension can hold.
 * @throws What `pace` throws.
 * @see PKWARE APPNOTE 6.3, 4.3 (order of parts) and 4.4 (fields).
 */
export async function zipOf(files: readonly ZipFile[], pace = paceOf()): Promise<Blob> {
  const parts: BlobPart[] = [];
  const directory: BlobPart[] = [];
  let [count, offset, directoryBytes] = [0, 0, 0];
  const costs = files.map(({ content, isDeflated }) => content.size * (isDeflated ? DEFLATE_COST : 1) + 1);
  const total = costs.reduce((sum, cost) => sum + cost, 0);
  let done = 0;
  for (const { name, content, isDeflated } of files) {
    const cost = costs[count] ?? 0;
    const { packed, crc } = await pack(content, isDeflated, pace.part(done / total, (done + cost) / total));
    done += cost;
    const packedBytes = packed?.size ?? content.size;
    const fields = fieldsOf(packed ? DEFLATED : STORED, crc, packedBytes, content.size, name);
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

/** A file's checksum and, where it is deflated, what is left of it. */
async function pack(
  content: Blob,
  isDeflated: boolean,
  pace: Pace,
): Promise<{ readonly packed: Blob | null; readonly crc: number }> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const deflate = isDeflated
    ? new Deflate({ level: 6 }, (part) => parts.push(part as Uint8Array<ArrayBuffer>))
    : null;
  const pieceBytes = PIECE_BYTES[deflate ? 'deflated' : 'stored'];
  let [crc, from] = [0, 0];
  do {
    const bytes = new Uint8Array(await content.slice(from, from + pieceBytes).arrayBuffer());
    from += pieceBytes;
    crc = crc32(bytes, crc);
    deflate?.push(bytes, from >= content.size);
    await pace.at(Math.min(1, from / content.size));
  } while (from < content.size);
  return { packed: deflate && new Blob(parts), crc };
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
