/** Where photos shared to the program wait for the page, and how the page is asked for them. */
const WAITING = 'glintgrade shared photos';
const NAME = 'X-File-Name';
/** Field of the form, as the manifest names it. */
const FIELD = 'photos';
const QUESTION = 'shared';

/**
 * Puts the photos of a share aside.
 *
 * @param form - What the device sends to the address that the manifest names.
 * @param base - Address of the program's folder, with a slash at its end.
 * @returns Address of the page that is to take them.
 */
export async function keepSharedPhotos(form: FormData, base: string): Promise<string> {
  const waiting = await caches.open(WAITING);
  for (const entry of form.getAll(FIELD)) {
    if (!(entry instanceof File)) continue;
    const headers = { 'Content-Type': entry.type, [NAME]: encodeURIComponent(entry.name) };
    await waiting.put(`${base}${QUESTION}/${crypto.randomUUID()}`, new Response(entry, { headers }));
  }
  return `${base}?${QUESTION}`;
}

/**
 * Takes the photos that were shared to the program since the last time, in their order; once only.
 *
 * @returns Nothing where nothing was shared, or where the browser keeps no copies.
 */
export async function takeSharedPhotos(): Promise<File[]> {
  forgetQuestion();
  if (!('caches' in globalThis) || !(await caches.has(WAITING))) return [];
  const waiting = await caches.open(WAITING);
  const files: File[] = [];
  for (const request of await waiting.keys()) {
    const response = await waiting.match(request);
    // Of two windows that ask at once, the one that deletes it has it.
    if (!response || !(await waiting.delete(request))) continue;
    const photo = await response.blob();
    const name = decodeURIComponent(response.headers.get(NAME) ?? '');
    files.push(new File([photo], name, { type: photo.type }));
  }
  return files;
}

/** A reload must not look like another share. */
function forgetQuestion(): void {
  const address = new URL(location.href);
  if (!address.searchParams.has(QUESTION)) return;
  address.searchParams.delete(QUESTION);
  history.replaceState(history.state, '', address);
}
