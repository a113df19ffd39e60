import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright';
import { stopSample, VIEWPORT, whenCopied, whenIdle } from './pageStart';
import { quantile } from './quantile';

const DECODES = 5;
const REGRADES = 10;
const SAMPLE_MS = 200;
const LONGEST_MS = 900_000;

/** From choosing a photo: until the page says that the outlines are known, until they are drawn, and until all is measured; ms. */
export interface StageTimes {
  readonly outlinesKnown: number;
  readonly outlinesDrawn: number;
  readonly measured: number;
}

/** What a photo takes in the page. */
export interface PhotoTimes {
  readonly stones: number;
  /** The browser's own decoding, ms: median of several. */
  readonly decode: number;
  /** The first photo after the sample, which was stopped, and the same photo again. */
  readonly first: StageTimes;
  readonly again: StageTimes;
  /** Most memory above the level before the first photo, less it decoded, bytes; not a number where the system does not tell. */
  readonly memory: number;
  /** From a click on another step until the verdicts stand in the document, laid out; and until the frame after; ms. */
  readonly regradeWork: number;
  readonly regradeShown: number;
}

interface Marks {
  chosen?: number;
  outlinesKnown?: number;
  outlinesDrawn?: number;
  measured?: number;
}

/**
 * Measures one photo in the page and grades it anew.
 *
 * @param path - Of a JPEG.
 * @param pixels - How many it has.
 */
export async function timePhoto(
  browser: Browser,
  url: string,
  path: string,
  pixels: number,
): Promise<PhotoTimes> {
  const decode = await timeDecoding(browser, url, path);
  const page = await openIdle(browser, url);
  const memory = await watchMemory(browser);
  const first = await timeStages(page, path, 1);
  const peak = await memory.end();
  const stones = await page.locator('.sorting-picture [data-stone]').count();
  const regrades = await timeRegrades(page);
  const again = await timeStages(page, path, 2);
  await page.context().close();
  return { stones, decode, first, again, memory: peak - 4 * pixels, ...regrades };
}

/** Chooses the photo as the nth of the page, the sample left out, and waits until it is measured. */
async function timeStages(page: Page, path: string, nth: number): Promise<StageTimes> {
  const file = { name: `tray ${nth}.jpg`, mimeType: 'image/jpeg', buffer: await readFile(path) };
  await page.evaluate(watchStages, nth);
  await page.getByLabel('Photo files').setInputFiles(file);
  const done = await page.waitForFunction(
    () => {
      const { marks } = window as unknown as { marks: Marks };
      return marks.measured !== undefined && marks.outlinesDrawn !== undefined && marks;
    },
    undefined,
    { timeout: LONGEST_MS, polling: 500 },
  );
  const marks = (await done.jsonValue()) as Required<Marks>;
  return {
    outlinesKnown: marks.outlinesKnown - marks.chosen,
    outlinesDrawn: marks.outlinesDrawn - marks.chosen,
    measured: marks.measured - marks.chosen,
  };
}

/** The page as it is between two photos: copied to the device, its engines loaded, with nothing under way. */
async function openIdle(browser: Browser, url: string): Promise<Page> {
  const page = await (await browser.newContext({ viewport: VIEWPORT })).newPage();
  await page.goto(url);
  // Said once the engines are there; the ball may be found before it can be seen that it is looked for.
  const begun = /Finding the ball and the lamp|Outlining the stones|Reading the highlights/;
  await page.getByText(begun).waitFor({ timeout: 120_000 });
  await stopSample(page);
  await whenCopied(page);
  await whenIdle(browser);
  return page;
}

/** `createImageBitmap` of the file, ms, in a page of its own so that it leaves nothing behind. */
async function timeDecoding(browser: Browser, url: string, path: string): Promise<number> {
  const page = await openIdle(browser, url);
  await page.evaluate(() => {
    const input = document.createElement('input');
    input.type = 'file';
    input.id = 'decoded';
    document.body.append(input);
  });
  await page.locator('#decoded').setInputFiles(path);
  const times = await page.evaluate(async (count) => {
    const file = document.querySelector<HTMLInputElement>('#decoded')!.files![0]!;
    const all: number[] = [];
    for (let k = 0; k < count; k++) {
      const start = performance.now();
      const bitmap = await createImageBitmap(file);
      all.push(performance.now() - start);
      bitmap.close();
    }
    return all;
  }, DECODES);
  await page.context().close();
  return quantile(times, 0.5);
}

/** Runs in the page: notes when what the nth photo goes through stands on the screen. */
function watchStages(nth: number): void {
  const marks: Marks = {};
  (window as unknown as { marks: Marks }).marks = marks;
  document.addEventListener(
    'change',
    ({ target }) => {
      if (target instanceof HTMLInputElement && target.type === 'file') marks.chosen ??= performance.now();
    },
    true,
  );
  const asked = new Set<string>();
  const note = (what: keyof Marks) => {
    if (asked.has(what)) return;
    asked.add(what);
    requestAnimationFrame(() =>
      setTimeout(() => {
        marks[what] = performance.now();
      }),
    );
  };
  const look = () => {
    if (marks.chosen === undefined) return;
    const said = document.querySelector('.note [role="status"]')?.textContent ?? '';
    const isDrawn = document.querySelector('.stage :is([data-stone], .found-outlines)') !== null;
    const states = [...document.querySelectorAll('.strip-status')].map((one) => one.textContent ?? '');
    const isMeasured = states.filter((text) => /^\d+ stones?$/.test(text)).length >= nth;
    if (/highlights/.test(said) || isDrawn) note('outlinesKnown');
    if (isDrawn) note('outlinesDrawn');
    if (isMeasured) note('measured');
    if (isDrawn && isMeasured) observer.disconnect();
  };
  const observer = new MutationObserver(look);
  observer.observe(document.body, { childList: true, subtree: true, characterData: true });
}

/** Switches from the first step to the last and back; medians. */
async function timeRegrades(page: Page): Promise<Pick<PhotoTimes, 'regradeWork' | 'regradeShown'>> {
  await page.locator('.token').first().waitFor();
  await page.waitForTimeout(1000);
  const work: number[] = [];
  const shown: number[] = [];
  for (let k = 0; k < REGRADES; k++) {
    const times = page.evaluate(timeNextRegrade);
    await page
      .locator('label.step')
      .filter({ hasText: k % 2 === 0 ? /^polish$/ : /^coarse$/ })
      .click();
    const one = await times;
    // The first run of this code is not typical of those that follow.
    if (k < 2) continue;
    work.push(one.work);
    shown.push(one.shown);
    await page.waitForTimeout(200);
  }
  return { regradeWork: quantile(work, 0.5), regradeShown: quantile(shown, 0.5) };
}

/** Runs in the page: from the next click to the change of the sorting picture and list, laid out, and to the next frame. */
function timeNextRegrade(): Promise<{ work: number; shown: number }> {
  return new Promise((resolve, reject) => {
    const tooLate = setTimeout(() => reject(new Error('No verdict changed within 20 s.')), 20_000);
    let start = 0;
    const clicked = () => {
      start ||= performance.now();
    };
    window.addEventListener('click', clicked, true);
    const observer = new MutationObserver(() => {
      if (start === 0) return;
      document.body.getBoundingClientRect();
      const work = performance.now() - start;
      observer.disconnect();
      window.removeEventListener('click', clicked, true);
      clearTimeout(tooLate);
      requestAnimationFrame(() => setTimeout(() => resolve({ work, shown: performance.now() - start })));
    });
    observer.observe(document.querySelector('.sorting-picture')!, { childList: true, subtree: true });
  });
}

/** Samples what the pages' processes take until it is ended; `end` gives the most above the level at the start, bytes. */
async function watchMemory(browser: Browser): Promise<{ end(): Promise<number> }> {
  const session = await browser.newBrowserCDPSession();
  const now = async () => {
    const { processInfo } = await session.send('SystemInfo.getProcessInfo');
    const pages = processInfo.filter(({ type }) => type === 'renderer');
    const sizes = await Promise.all(pages.map(({ id }) => processBytes(id)));
    return sizes.reduce((sum, one) => sum + one, 0);
  };
  const pause = () => new Promise((resolve) => setTimeout(resolve, SAMPLE_MS));
  const levels: number[] = [];
  for (let k = 0; k < 5; k++) {
    levels.push(await now());
    await pause();
  }
  const level = quantile(levels, 0.5);
  let isOver = false;
  let peak = level;
  const sampling = (async () => {
    while (!isOver) {
      peak = Math.max(peak, await now());
      await pause();
    }
  })();
  return {
    async end() {
      isOver = true;
      await sampling;
      await session.detach();
      return level > 0 ? peak - level : Number.NaN;
    },
  };
}

/** Proportional set size of a process; Linux only. */
async function processBytes(id: number): Promise<number> {
  const text = await readFile(`/proc/${id}/smaps_rollup`, 'utf8').catch(() => '');
  return 1024 * Number(/^Pss:\s+(\d+)/m.exec(text)?.[1] ?? 0);
}
