/**
 * Times the built page in a real Chromium: `npm run bench:page`. The polished sample tray brought to 12 megapixels
 * (`-- --megapixels 2` for another size), as multiples of the browser's own decoding of it; memory; grading anew; the
 * page's start in a fresh profile and from its copy on the device; script as it is sent, in Brotli, as static hosts do.
 * One table, each line with its target; ends with 1 when one is missed. `-- --only start` or `photo` does a half of it.
 */
import { rm } from 'node:fs/promises';
import { loadavg } from 'node:os';
import { parseArgs } from 'node:util';
import sharp from 'sharp';
import { serveBuilt } from '../helpers/serveBuilt';
import { serveCompressed } from '../helpers/serveCompressed';
import { timePhoto } from './pagePhoto';
import { openChromium, shippedBytes, timeStarts } from './pageStart';
import { photoFolder, trayOf } from './speedPhotos';

const { values } = parseArgs({
  options: { megapixels: { type: 'string', default: '12' }, only: { type: 'string' } },
});

let isMet = true;
const say = (name: string, value: string, target = '', met = '') =>
  console.log(`${name.padEnd(58)}${value.padStart(12)}${target.padStart(9)}  ${met}`.trimEnd());

/** Prints a line of the table; without a target it is only told. */
function line(name: string, value: number, unit: string, digits = 0, target?: number): void {
  const shown = `${value.toFixed(digits)}${unit}`;
  const met = target === undefined || value <= target;
  isMet &&= met;
  if (target === undefined) say(name, shown, '–');
  else say(name, shown, `${target}${unit}`, met ? 'met' : 'NOT MET');
}

async function photoLines(url: string): Promise<void> {
  const folder = await photoFolder();
  const browser = await openChromium();
  try {
    const { path } = await trayOf(Number(values.megapixels), folder);
    const { width, height } = await sharp(path).metadata();
    const times = await timePhoto(browser, url, path, width * height);
    const multiples = (ms: number) => ms / times.decode;
    line(`decoding of ${values.megapixels} megapixels by the browser`, times.decode, ' ms');
    for (const [which, ms] of [
      ['first photo', times.first],
      ['the same photo again', times.again],
    ] as const) {
      say(`${which}, as multiples of it:`, '');
      line('  outlines known to the page', multiples(ms.outlinesKnown), '', 1);
      line('  outlines on screen', multiples(ms.outlinesDrawn), '', 1, 1.5);
      line(`  all ${times.stones} stones measured`, multiples(ms.measured), '', 1, 3);
      line('  the same in seconds', ms.measured / 1000, ' s', 1);
    }
    line('most memory above the level before, less the first photo', times.memory / 1e6, ' MB', 0, 350);
    line('graded anew: work from the click to verdicts laid out', times.regradeWork, ' ms', 1, 16);
    line('graded anew: from the click past the next frame', times.regradeShown, ' ms', 1);
  } finally {
    await browser.close();
    await rm(folder, { recursive: true });
  }
}

async function startLines(url: string): Promise<void> {
  const times = await timeStarts(url);
  line('start in a fresh profile, to choosing a photo', times.cold, ' ms');
  line('start from the copy on the device', times.warm, ' ms', 0, 1000);
  line('script before a photo can be chosen', times.scriptBytes / 1000, ' kB', 0, 250);
  line('script in all', (await shippedBytes(url, /\.m?js$/)) / 1000, ' kB');
  line('script and WebAssembly in all', (await shippedBytes(url, /\.(m?js|wasm)$/)) / 1000, ' kB');
}

const served = await serveCompressed(await serveBuilt('src'));
try {
  // The server compresses every file once, which is no part of a visit.
  await shippedBytes(served.url, /./);
  say('what', 'measured', 'target');
  if (values.only !== 'photo') await startLines(served.url);
  if (values.only !== 'start') await photoLines(served.url);
} finally {
  await served.close();
}
console.log(`load average at the end: ${loadavg()[0]!.toFixed(1)}`);
process.exitCode = isMet ? 0 : 1;
