import { readFile } from 'node:fs/promises';
import { openPage } from '../helpers/openPage';
import { serveBuilt } from '../helpers/serveBuilt';
import type { PageEnd } from './fuzzPage/main';

/** How the page dealt with a file, and the processor's time that it took, which a busy machine does not change, ms. */
export interface Graded extends PageEnd {
  readonly processorMs: number;
}

/** A built page that grades files as the app does, in a Chromium of its own. */
export interface Grader {
  /** Stops after `mostMs`. */
  grade(bytes: Uint8Array, mostMs: number): Promise<Graded>;
  /** Most levels of 255 by which two files differ once decoded; null where their sizes differ. */
  difference(one: Uint8Array, other: Uint8Array): Promise<number | null>;
  /** Bytes held by the page and its workers, and by all of Chromium's processes; the latter on Linux only, else 0. */
  memory(): Promise<{ readonly page: number; readonly processes: number }>;
  /** Errors that nobody caught, as they come. */
  readonly errors: readonly string[];
  close(): Promise<void>;
}

export async function openGrader(): Promise<Grader> {
  const served = await serveBuilt('tests/fuzz/fuzzPage');
  const { page, close } = await openPage(served.url);
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('crash', () => errors.push('the page crashed'));
  await page.waitForFunction(() => 'grade' in window);
  const devtools = await page.context().browser()!.newBrowserCDPSession();
  const processorMs = async () => {
    const { processInfo } = await devtools.send('SystemInfo.getProcessInfo');
    return processInfo.reduce(
      (sum, { type, cpuTime }) => sum + (type === 'renderer' ? 1000 * cpuTime : 0),
      0,
    );
  };
  return {
    errors,
    async grade(bytes, mostMs) {
      const before = await processorMs();
      const end = await page.evaluate(([file, most]) => window.grade(file, most), [
        base64(bytes),
        mostMs,
      ] as const);
      return { ...end, processorMs: (await processorMs()) - before };
    },
    difference: (one, other) =>
      page.evaluate(([a, b]) => window.difference(a, b), [base64(one), base64(other)] as const),
    async memory() {
      const { processInfo } = await devtools.send('SystemInfo.getProcessInfo');
      const held = await Promise.all(processInfo.map(({ id }) => residentBytes(id)));
      return {
        page: await page.evaluate(() => window.memory()),
        processes: held.reduce((sum, bytes) => sum + bytes, 0),
      };
    },
    async close() {
      await close();
      await served.close();
    },
  };
}

const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString('base64');

/** Memory of a process that is not swapped out or shared with files; 0 where the system does not tell. */
async function residentBytes(process: number): Promise<number> {
  const status = await readFile(`/proc/${process}/status`, 'utf8').catch(() => '');
  return 1024 * Number(/^RssAnon:\s+(\d+) kB/m.exec(status)?.[1] ?? 0);
}
