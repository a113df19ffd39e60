import { createServer, get, type IncomingMessage, type OutgoingHttpHeaders } from 'node:http';
import type { AddressInfo } from 'node:net';
import { promisify } from 'node:util';
import { brotliCompress, constants } from 'node:zlib';
import type { Served } from './serveBuilt';

/** What static hosts compress; photos and archives are compressed already. */
const COMPRESSIBLE = /^(text\/|application\/(javascript|json|manifest\+json|wasm)|image\/svg\+xml)/;
/** What hosts commonly take for files compressed as they are sent. */
const BROTLI_QUALITY = 5;

const brotli = promisify(brotliCompress);

interface Answer {
  readonly status: number;
  readonly headers: OutgoingHttpHeaders;
  readonly body: Buffer;
}

/**
 * Serves what another server serves, with text and WebAssembly in Brotli as a static host sends them; Vite's preview
 * server does not compress. Every file is compressed once.
 *
 * @param behind - The server of the built app; closed together with this one.
 */
export async function serveCompressed(behind: Served): Promise<Served> {
  const known = new Map<string, Promise<Answer>>();
  const server = createServer((request, response) => {
    const path = request.url ?? '/';
    const answer = known.get(path) ?? compressed(new URL(path, behind.url));
    known.set(path, answer);
    answer.then(
      ({ status, headers, body }) => response.writeHead(status, headers).end(body),
      () => response.writeHead(502).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/`,
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await behind.close();
    },
  };
}

async function compressed(address: URL): Promise<Answer> {
  const answer = await new Promise<IncomingMessage>((resolve, reject) =>
    get(address, resolve).on('error', reject),
  );
  const parts: Buffer[] = [];
  for await (const part of answer) parts.push(part);
  const plain = Buffer.concat(parts);
  const { 'transfer-encoding': _, connection: __, ...headers } = answer.headers;
  const status = answer.statusCode ?? 502;
  if (!COMPRESSIBLE.test(headers['content-type'] ?? ''))
    return { status, headers: { ...headers, 'content-length': plain.length }, body: plain };
  const body = await brotli(plain, { params: { [constants.BROTLI_PARAM_QUALITY]: BROTLI_QUALITY } });
  const sent = { 'content-encoding': 'br', vary: 'Accept-Encoding', 'content-length': body.length };
  return { status, headers: { ...headers, ...sent }, body };
}
