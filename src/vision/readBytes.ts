/**
 * Reads one of the program's own files: by `fetch` in a page or worker, from the disk in Node.
 *
 * @param url - What `import url from './file?url'` gives: an address in the page, a `file:` URL in Node.
 * @throws Error if the file cannot be had.
 */
export async function readBytes(url: string): Promise<Uint8Array<ArrayBuffer>> {
  if (import.meta.env.SSR) {
    const { readFile } = await import('node:fs/promises');
    return new Uint8Array(await readFile(new URL(url)));
  }
  const response = await fetch(url);
  if (!response.ok)
    throw new Error(`A part of the program could not be loaded: ${url} (${response.status}).`);
  return new Uint8Array(await response.arrayBuffer());
}
