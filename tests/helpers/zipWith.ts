import { type ZipFile, zipOf } from '../../src/bundle/zipOf';

/** A zip of texts and bytes under any names. */
export function zipWith(files: Readonly<Record<string, string | Uint8Array<ArrayBuffer>>>): Promise<Blob> {
  return zipOf(
    Object.entries(files).map(
      ([name, content]): ZipFile => ({
        name,
        content: new Blob([content]),
        isDeflated: typeof content === 'string',
      }),
    ),
  );
}

/** Where the fields of an entry of a zip's directory lie; PKWARE APPNOTE 6.3, 4.3.12: bytes from its beginning, and size. */
const FIELDS = {
  flags: [8, 2],
  method: [10, 2],
  crc: [16, 4],
  packedBytes: [20, 4],
  bytes: [24, 4],
  headerAt: [42, 4],
} as const;

/**
 * Alters what a zip's directory claims, and nothing else.
 *
 * @param index - Of the entry, from 0.
 */
export async function claiming(
  zip: Blob,
  index: number,
  claims: Partial<Record<keyof typeof FIELDS, number>>,
): Promise<Blob> {
  const bytes = new Uint8Array(await zip.arrayBuffer());
  const view = new DataView(bytes.buffer);
  let at = view.getUint32(bytes.length - 6, true);
  for (let i = 0; i < index; i++) at += 46 + view.getUint16(at + 28, true);
  for (const [field, value] of Object.entries(claims)) {
    const [from, size] = FIELDS[field as keyof typeof FIELDS];
    if (size === 2) view.setUint16(at + from, value, true);
    else view.setUint32(at + from, value, true);
  }
  return new Blob([bytes]);
}
