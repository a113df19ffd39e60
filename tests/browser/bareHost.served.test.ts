import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { openPage } from '../helpers/openPage';
import { whenCopied } from './offlineSite';

const ELSEWHERE = 'http://127.0.0.1:9/elsewhere';

/** The built app as a host hands it out that sends no header of ours, only what a file is. */
const server = createServer(async (request, response) => {
  const answer = await fetch(new URL(request.url ?? '', inject('appUrl')));
  response.setHeader('Content-Type', answer.headers.get('Content-Type') ?? 'application/octet-stream');
  response.writeHead(answer.status).end(Buffer.from(await answer.arrayBuffer()));
});
let url: string;

beforeAll(async () => {
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});

afterAll(() => {
  server.closeAllConnections();
  server.close();
});

it('is walled in on a host that sends no headers: by the page itself at once, in workers from the second visit on', async () => {
  expect((await fetch(url)).headers.get('Content-Security-Policy')).toBeNull();
  const { page, errors, close } = await openPage(url);
  expect(await page.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')).toMatch(
    /^default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self';/,
  );
  expect(await page.locator('meta[name="referrer"]').getAttribute('content')).toBe('no-referrer');
  await whenCopied(page);
  await page.reload();
  await expect.poll(() => page.workers().length).toBeGreaterThan(0);

  const allows = (feature: string) =>
    page.evaluate((name) => (document as unknown as Policed).featurePolicy.allowsFeature(name), feature);
  expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
  expect(await allows('camera')).toBe(true);
  for (const feature of ['microphone', 'geolocation', 'usb']) expect(await allows(feature)).toBe(false);
  const [worker] = page.workers();
  const forbade = await worker?.evaluate(
    (elsewhere) =>
      new Promise((done) => {
        addEventListener('securitypolicyviolation', ({ effectiveDirective }) => done(effectiveDirective));
        fetch(elsewhere).catch(() => {});
        setTimeout(() => done('nothing'), 5000);
      }),
    ELSEWHERE,
  );
  expect(forbade).toBe('connect-src');
  // Chromium tells of it on the console too, and of nothing else.
  expect(errors.filter((text) => !text.includes(ELSEWHERE))).toEqual([]);
  await close();
});

/** Chromium's way to ask what the Permissions-Policy lets a page do. */
interface Policed {
  readonly featurePolicy: { allowsFeature(name: string): boolean };
}
