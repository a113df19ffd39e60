import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, inject, it } from 'vitest';
import { openPage } from '../helpers/openPage';
import { openWithCamera } from './cameraBrowser';

/** Another server than the page's; nothing listens there. */
const ELSEWHERE = 'http://127.0.0.1:9/elsewhere';

/** A page without any policy whose page, workers and socket ask another server. */
const OPEN_SITE: Record<string, readonly [type: string, text: string]> = {
  '/': ['text/html', '<!doctype html><title>Open</title><script src="page.js"></script>'],
  '/page.js': [
    'text/javascript',
    `new Image().src = '${ELSEWHERE}/picture';
    new Worker('worker.js');
    navigator.serviceWorker.register('serviceWorker.js');
    new WebSocket('${ELSEWHERE.replace('http', 'ws')}/socket');`,
  ],
  '/worker.js': ['text/javascript', `fetch('${ELSEWHERE}/worker').catch(() => {});`],
  '/serviceWorker.js': ['text/javascript', `fetch('${ELSEWHERE}/serviceWorker').catch(() => {});`],
};

let openSite: string;
const asked: string[] = [];
const server = createServer((request, response) => {
  asked.push(request.url ?? '');
  const [type, text] = OPEN_SITE[request.url ?? ''] ?? [];
  response.writeHead(type ? 200 : 404, { 'Content-Type': type ?? 'text/plain' }).end(text);
});

beforeAll(async () => {
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  openSite = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});

afterAll(() => {
  server.closeAllConnections();
  server.close();
});

const OPENERS = [
  ['openPage', (url: string) => openPage(url)],
  ['openWithCamera', (url: string) => openWithCamera(url, 'none')],
] as const;

it.each(OPENERS)('every test of a page fails when it asks another server: %s', async (_name, open) => {
  const { foreignRequests, close } = await open(openSite);
  await expect
    .poll(() => foreignRequests.map((address) => new URL(address).pathname).sort())
    .toEqual(['picture', 'serviceWorker', 'socket', 'worker'].map((what) => `/elsewhere/${what}`));
  await expect(close()).rejects.toThrow(`Asked of another server: ${ELSEWHERE}/picture`);
});

/** What the policy must stop, tried outside the reach of the test's own tools, and the directive that stops it. */
const TRIES: readonly (readonly [directive: string, tryIt: (elsewhere: string) => void])[] = [
  // biome-ignore lint/security/noGlobalEval: it is what must not run.
  ['script-src', () => void setTimeout(() => eval('document.title = "evil"'))],
  [
    'script-src-elem',
    () => {
      const script = document.createElement('script');
      script.textContent = 'document.title = "evil"';
      document.body.append(script);
    },
  ],
  [
    'script-src-attr',
    () => {
      document.body.insertAdjacentHTML('beforeend', '<b onclick="document.title=\'evil\'">b</b>');
      document.querySelector('b')?.click();
    },
  ],
  ['style-src-attr', () => document.body.insertAdjacentHTML('beforeend', '<i style="color:red">i</i>')],
  ['style-src-elem', () => document.body.insertAdjacentHTML('beforeend', '<style>i{color:red}</style>')],
  ['img-src', (elsewhere) => Object.assign(new Image(), { src: elsewhere })],
  ['connect-src', (elsewhere) => void fetch(elsewhere).catch(() => {})],
  ['connect-src', (elsewhere) => void new WebSocket(elsewhere.replace('http', 'ws'))],
  ['frame-src', (elsewhere) => document.body.insertAdjacentHTML('beforeend', `<iframe src="${elsewhere}">`)],
  ['object-src', (elsewhere) => document.body.insertAdjacentHTML('beforeend', `<embed src="${elsewhere}">`)],
  ['base-uri', (elsewhere) => document.head.insertAdjacentHTML('beforeend', `<base href="${elsewhere}">`)],
  ['font-src', (elsewhere) => void new FontFace('Evil', `url(${elsewhere})`).load().catch(() => {})],
  // The last, since the browser shows a page of its own in place of what it would not send.
  [
    'form-action',
    (elsewhere) => {
      document.body.insertAdjacentHTML('beforeend', `<form action="${elsewhere}"></form>`);
      document.forms[0]?.submit();
    },
  ],
];

const violationsIn = (errors: readonly string[]) =>
  errors.flatMap((text) => /^The policy forbids .* by ([a-z-]+),/.exec(text)?.[1] ?? []);

it('forbids inline script, inline style, eval and every other server, and a test in which that is tried fails', async () => {
  const { page, errors, close } = await openPage(inject('appUrl'));
  for (const [directive, tryIt] of TRIES) {
    if (directive === 'form-action') expect(await page.title()).toBe('Glintgrade');
    await page.evaluate(tryIt, `${openSite}never`);
  }
  await expect
    .poll(() => [...new Set(violationsIn(errors))].sort(), { timeout: 5000 })
    .toEqual([...new Set(TRIES.map(([directive]) => directive))].sort());
  expect(asked.filter((path) => path.startsWith('/never'))).toEqual([]);
  await expect(close()).rejects.toThrow('The policy forbids inline by style-src-attr');
});
