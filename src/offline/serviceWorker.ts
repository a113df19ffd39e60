import { programCopy } from './programCopy';
import type { ProgramFiles } from './programFiles';
import { keepSharedPhotos } from './sharedPhotos';

/** Written in by the build (.config/plugins/offlineCopy.ts). */
declare const PROGRAM_FILES: ProgramFiles;

/** The part of a service worker's global scope used here. */
interface Scope {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void>; matchAll(): Promise<readonly unknown[]> };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', listener: (event: Waiting) => void): void;
  addEventListener(kind: 'message', listener: (event: Waiting & { readonly data: unknown }) => void): void;
  addEventListener(kind: 'fetch', listener: (event: Fetching) => void): void;
}
interface Waiting {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Waiting {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}

const scope = self as unknown as Scope;
const base = scope.registration.scope;
const copy = programCopy(PROGRAM_FILES, base);

scope.addEventListener('install', (event) => event.waitUntil(copy.take()));
scope.addEventListener('activate', (event) => event.waitUntil(start()));
scope.addEventListener('message', (event) => {
  // A new version waits until the person says so, or until no window is open.
  if (event.data === 'take over') event.waitUntil(scope.skipWaiting());
});
scope.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method === 'POST' && request.url === `${base}share`) event.respondWith(takeShare(request));
  else if (request.method === 'GET' && request.url.startsWith(base)) event.respondWith(answer(request));
});

/** Other windows may still run the version before and load parts of it. */
async function start(): Promise<void> {
  await copy.forgetOthers((await scope.clients.matchAll()).length > 1);
  await scope.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  return (await copy.answer(request)) ?? fetch(request);
}

async function takeShare(request: Request): Promise<Response> {
  return Response.redirect(await keepSharedPhotos(await request.formData(), base), 303);
}
