import { type BrowserContextOptions, chromium, type Page } from 'playwright';
import { CHROMIUM_SWITCHES, findChromium } from '../../.config/chromium.mjs';

export interface WatchedPage {
  readonly page: Page;
  /** Errors on the console and those nobody caught, as they come. */
  readonly errors: readonly string[];
  /** Addresses asked for outside the page's own server, as they come. */
  readonly foreignRequests: readonly string[];
  close(): Promise<void>;
}

/** Opens an address in a real Chromium of its own and watches what goes wrong in it. */
export async function openPage(url: string, options: BrowserContextOptions = {}): Promise<WatchedPage> {
  const executablePath = findChromium();
  const browser = await chromium.launch({
    args: CHROMIUM_SWITCHES,
    ...(executablePath ? { executablePath } : {}),
  });
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const errors: string[] = [];
  const foreignRequests: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  context.on('request', (request) => {
    if (/^(https?|wss?):/.test(request.url()) && !request.url().startsWith(url))
      foreignRequests.push(request.url());
  });
  await page.goto(url);
  return { page, errors, foreignRequests, close: () => browser.close() };
}
