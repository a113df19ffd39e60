import type { BrowserContext, Page } from 'playwright';

/** What goes wrong in a page, as it comes. */
export interface Watched {
  /** Errors on the console, those nobody caught, and what the page's policy forbade. */
  readonly errors: readonly string[];
  /** Addresses asked for outside the page's own server. */
  readonly foreignRequests: readonly string[];
  /**
   * For the end of every test of a page.
   *
   * @throws Error if anything was asked of another server, or the page tried what its policy forbids.
   */
  expectWalled(): void;
}

/** A violation of the policy on the console, told by the page itself. */
const VIOLATION = 'The policy forbids';

/**
 * Watches a page from before it opens.
 *
 * @param url - Address that it will open; its folder is the page's own server.
 */
export async function watchPage(context: BrowserContext, page: Page, url: string): Promise<Watched> {
  const own = new URL('.', url).href;
  const errors: string[] = [];
  const foreignRequests: string[] = [];
  const violations = () => errors.filter((text) => text.startsWith(VIOLATION));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  const note = (address: string) => {
    if (/^(https?|wss?):/.test(address) && !address.startsWith(own)) foreignRequests.push(address);
  };
  context.on('request', (request) => note(request.url()));
  page.on('websocket', (socket) => note(socket.url()));
  await page.addInitScript((said) => {
    addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sourceFile }) =>
      console.error(
        `${said} ${blockedURI || 'this'} by ${effectiveDirective}, in ${sourceFile || 'the page'}.`,
      ),
    );
  }, VIOLATION);
  return {
    errors,
    foreignRequests,
    expectWalled() {
      const found = [
        ...foreignRequests.map((address) => `Asked of another server: ${address}`),
        ...violations(),
      ];
      if (found.length > 0) throw new Error(found.join('\n'));
    },
  };
}
