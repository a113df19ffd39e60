import { Deflate } from 'fflate';
import { crc32 } from '../../src/bundle/crc32';

type Bytes = Uint8Array<ArrayBuffer>;
export type Content = string | Bytes;

/** What a header may be made to say; what is left out is the truth. */
interface Claims {
  readonly name?: Content;
  readonly flags?: number;
  readonly method?: number;
  readonly crc?: number;
  readonly packedBytes?: number;
  readonly bytes?: number;
}

/** A file of a zip and what its two headers say of it. */
export interface RawFile {
  readonly name: Content;
  readonly content: Content;
  readonly isDeflated?: boolean;
  readonly local?: Claims;
  readonly central?: Claims & { readonly headerAt?: number };
  /** Bytes between packed content and the next header, such as a data descriptor. */
  readonly after?: Bytes;
  /** Bytes that lie packed, whatever the content is. */
  readonly packed?: Bytes;
  /** True for a file of which only the directory speaks. */
  readonly isUnwritten?: boolean;
}

interface EndClaims {
  readonly count?: number;
  readonly directoryBytes?: number;
  readonly directoryAt?: number;
  readonly comment?: Content;
  /** Bytes before the first header, which places take into account. */
  readonly before?: Content;
}

const encoder = new TextEncoder();
export const bytesOf = (content: Content): Bytes =>
  typeof content === 'string' ? encoder.encode(content) : content;

/** Bytes deflated raw; RFC 1951. */
export function deflated(content: Bytes): Bytes {
  const parts: Bytes[] = [];
  const deflate = new Deflate({ level: 6 }, (part) => parts.push(part as Bytes));
  for (let at = 0; at < content.length || at === 0; at += 2 ** 20)
    deflate.push(content.subarray(at, at + 2 ** 20), at + 2 ** 20 >= content.length);
  return joined(parts);
}

export function joined(parts: readonly Bytes[]): Bytes {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** Numbers one after the other, least significant byte first: [value, bytes]. */
export function littleEndian(...fields: readonly (readonly [value: number, bytes: number])[]): Bytes {
  return Uint8Array.from(
    fields.flatMap(([value, size]) =>
      Array.from({ length: size }, (_, i) => Math.floor(value / 256 ** i) % 256),
    ),
  );
}

/**
 * A zip that may say anything, true or not.
 *
 * @see PKWARE APPNOTE 6.3, 4.3.7 (local header), 4.3.12 (directory) and 4.3.16 (end).
 */
export function rawZip(files: readonly RawFile[], end: EndClaims = {}): Blob {
  const parts: Bytes[] = [bytesOf(end.before ?? '')];
  let at = parts[0]!.length;
  const directory = files.map((file) => {
    const { local, central } = headersOf(file);
    const headerAt = file.central?.headerAt ?? at;
    if (!file.isUnwritten) {
      parts.push(...local);
      at += local.reduce((sum, { length }) => sum + length, 0);
    }
    return central(headerAt);
  });
  const list = joined(directory);
  const comment = bytesOf(end.comment ?? '');
  const { count = files.length, directoryBytes = list.length, directoryAt = at } = end;
  const last = littleEndian(
    ...[[0x06054b50, 4] as const, [0, 4] as const, [count, 2] as const, [count, 2] as const],
    ...[[directoryBytes, 4] as const, [directoryAt, 4] as const, [comment.length, 2] as const],
  );
  return new Blob([...parts, list, last, comment]);
}

function headersOf(file: RawFile) {
  const content = bytesOf(file.content);
  const packed = file.packed ?? (file.isDeflated ? deflated(content) : content);
  const truth: Required<Claims> = {
    ...{ name: file.name, flags: 0, method: file.isDeflated || file.packed ? 8 : 0 },
    ...{ crc: crc32(content), packedBytes: packed.length, bytes: content.length },
  };
  const fields = ({ name, flags, method, crc, packedBytes, bytes }: Required<Claims>) =>
    littleEndian(
      ...[[20, 2] as const, [flags, 2] as const, [method, 2] as const, [0, 2] as const, [0x21, 2] as const],
      ...[[crc, 4] as const, [packedBytes, 4] as const, [bytes, 4] as const],
      ...[[bytesOf(name).length, 2] as const, [0, 2] as const],
    );
  const [here, there] = [
    { ...truth, ...file.local },
    { ...truth, ...file.central },
  ];
  const central = (headerAt: number) =>
    joined([
      littleEndian([0x02014b50, 4], [20, 2]),
      fields(there),
      littleEndian([0, 2], [0, 2], [0, 2], [0, 4], [headerAt, 4]),
      bytesOf(there.name),
    ]);
  const local = [
    ...[littleEndian([0x04034b50, 4]), fields(here), bytesOf(here.name), packed],
    ...[file.after ?? new Uint8Array()],
  ];
  return { local, central };
}
