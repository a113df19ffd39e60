import { afterEach, expect, it } from 'vitest';
import { programCopy } from '../../src/offline/programCopy';
import trayUrl from '../golden/tray.heic?url';
import turnedUrl from '../golden/turned.jpg?url';

const base = new URL('/a-folder-of-its-own/', location.href).href;

afterEach(async () => {
  for (const name of await caches.keys()) await caches.delete(name);
});

const filesWith = (headers: Record<string, string>) => ({
  version: 'first',
  lasting: [trayUrl],
  changing: [turnedUrl],
  later: [],
  headers,
});

it('gives every file the headers of its version, those of an earlier version too, without fetching them again', async () => {
  const before = programCopy(filesWith({ 'X-Content-Type-Options': 'nosniff' }), base);
  await before.take();
  const asked = () => performance.getEntriesByType('resource').filter(({ name }) => name.endsWith(trayUrl));
  const requests = asked().length;
  expect(requests).toBeGreaterThan(0);

  const policy = "default-src 'none'";
  const after = programCopy(filesWith({ 'Content-Security-Policy': policy }), base);
  await after.take();
  expect(asked()).toHaveLength(requests);
  for (const url of [trayUrl, turnedUrl]) {
    const answer = await after.answer(new Request(new URL(url, base)));
    expect(answer?.headers.get('Content-Security-Policy')).toBe(policy);
    const bytes = await answer?.arrayBuffer();
    expect(bytes?.byteLength).toBe((await (await fetch(url)).arrayBuffer()).byteLength);
  }
});

it('leaves to the network what is no file of the program', async () => {
  const copy = programCopy(filesWith({}), base);
  await copy.take();
  expect(await copy.answer(new Request(`${base}elsewhere.js`))).toBeNull();
});
