import { type BrowserContextOptions, chromium, type Page } from 'playwright';
import { CHROMIUM_SWITCHES, findChromium } from '../../.config/chromium.mjs';
import { type Watched, watchPage } from './watchPage';

export interface WatchedPage extends Pick<Watched, 'errors' | 'foreignRequests'> {
  readonly page: Page;
  /** @throws Error if the page asked anything of another server or tried what its policy forbids. */
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
  const { errors, foreignRequests, expectWalled } = await watchPage(context, page, url);
  const close = async () => {
    await browser.close();
    expectWalled();
  };
  await page.goto(url);
  return { page, errors, foreignRequests, close };
}
