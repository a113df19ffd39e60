/**
 * Times the journal in Chromium at its full size: `npm run bench:journal`. The built app is served, its IndexedDB is
 * filled with 100 and with 10,000 checks of 12 stones each, and the list of batches, a batch and the comparison are
 * opened. Prints medians of several runs, the growth from one to the other, and exits with 1 when a target is missed.
 */
import type { Page } from 'playwright';
import { batchDigest } from '../../src/history/batchDigest';
import { type CheckSo, inventedBatch, recordsOf } from '../helpers/inventedBatch';
import { openPage } from '../helpers/openPage';
import { serveBuilt } from '../helpers/serveBuilt';
import { quantile } from './quantile';

const STONES = 12;
const CHECKS_PER_BATCH = 20;
const RUNS = 5;
const LIST_MS = 300;
const COMPARE_MS = 1000;
const MATERIALS = [
  'agate',
  'jasper',
  'obsidian',
  'quartz',
  'carnelian',
  'basalt',
  'granite',
  'nephrite',
] as const;

/** A batch from coarse to polish; the page makes the others of it. */
function template() {
  const checks = Array.from({ length: CHECKS_PER_BATCH }, (_, k): CheckSo => {
    const step = k < 15 ? 'coarse' : (['medium', 'fine', 'prepolish', 'polish', 'polish'] as const)[k - 15]!;
    const stones = Array.from({ length: STONES }, (_, i) => ({
      pits: Math.max(0, 9 - k + (i % 3)),
      fractureMm: i % 4 === 0 ? 4 * Math.exp(-k / 6) : 0,
      lengthMm: 28 * 0.99 ** k,
      ...(step === 'polish' ? { alpha: 0.01 + 0.004 * i } : {}),
    }));
    return { step, day: 8 * (k + 1), stones };
  });
  const records = inventedBatch(checks, { letter: 'B', material: 'agate' });
  return { records: recordsOf(records), digest: batchDigest(records) };
}

/** Fills the page's journal, which the app has opened once before, with copies of a batch. */
async function fill(page: Page, batches: number): Promise<void> {
  await page.evaluate(
    async ({ text, count, materials }) => {
      const db = await new Promise<IDBDatabase>((resolve, reject) => {
        const asked = indexedDB.open('glintgrade journal');
        asked.onsuccess = () => resolve(asked.result);
        asked.onerror = () => reject(asked.error);
      });
      for (let k = 0; k < count; k++) {
        const id = k.toString(36).toUpperCase().padStart(4, '0');
        const material = materials[k % materials.length]!;
        const copy = JSON.parse(text.replaceAll('"01B', `"01B${id}`).replaceAll('"agate"', `"${material}"`));
        const transaction = db.transaction(['records', 'digests'], 'readwrite');
        for (const record of copy.records) transaction.objectStore('records').put(record);
        transaction.objectStore('digests').put({ ...copy.digest, name: `Brook pebbles ${k}` });
        await new Promise<void>((resolve, reject) => {
          transaction.oncomplete = () => resolve();
          transaction.onerror = () => reject(transaction.error);
        });
      }
      db.close();
    },
    { text: JSON.stringify(template()), count: batches, materials: [...MATERIALS] },
  );
}

/** Goes to a place of the page; ms until what is asked for is there and painted. */
const timeTo = (page: Page, place: string, selector: string, count: number) =>
  page.evaluate(
    async ({ hash, wanted, least }) => {
      const start = performance.now();
      location.hash = hash;
      while (document.querySelectorAll(wanted).length < least) {
        await new Promise((resolve) => setTimeout(resolve, 0));
      }
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
      return performance.now() - start;
    },
    { hash: place, wanted: selector, least: count },
  );

/** Loads the page at the list of batches; ms from the start of the navigation until it is painted. */
async function timeToOpen(page: Page, url: string, rows: number): Promise<number> {
  await page.goto('about:blank');
  await page.goto(`${url}#/journal`);
  return timeFromStart(page, rows);
}

const timeFromStart = (page: Page, rows: number) =>
  page.evaluate(async (least) => {
    while (document.querySelectorAll('.batch-row').length < least) {
      await new Promise((resolve) => setTimeout(resolve, 0));
    }
    await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
    return performance.now();
  }, rows);

interface Times {
  readonly open: number;
  readonly list: number;
  readonly batch: number;
  readonly compare: number;
}

async function measure(url: string, batches: number): Promise<Times> {
  const watched = await openPage(`${url}#/journal`, { viewport: { width: 390, height: 844 } });
  const { page } = watched;
  await page.getByText('Nothing is kept yet.').waitFor();
  await fill(page, batches);
  const runs: Times[] = [];
  for (let k = 0; k < RUNS; k++) {
    const open = await timeToOpen(page, url, Math.min(batches, SHOWN));
    await timeTo(page, '/', '.thumb-bar', 1);
    const list = await timeTo(page, '/journal', '.batch-row', Math.min(batches, SHOWN));
    const first = await page.locator('.batch').first().getAttribute('href');
    const batch = await timeTo(page, first!.slice(1), '.stone-row', STONES);
    const compare = await timeTo(page, '/compare', '.compare svg path', 1);
    runs.push({ open, list, batch, compare });
  }
  if (watched.errors.length > 0) throw new Error(watched.errors.join('\n'));
  await watched.close();
  const median = (figure: keyof Times) =>
    quantile(
      runs.map((run) => run[figure]),
      0.5,
    );
  return { open: median('open'), list: median('list'), batch: median('batch'), compare: median('compare') };
}

/** Rows that the list shows at first. */
const SHOWN = 40;

const served = await serveBuilt('src');
const small = await measure(served.url, 5);
const large = await measure(served.url, 500);
await served.close();

const rows: [string, keyof Times, number | null][] = [
  ['page loaded at the list of batches', 'open', null],
  ['list of batches', 'list', LIST_MS],
  ['a batch with its stones', 'batch', null],
  ['comparison of all stones', 'compare', COMPARE_MS],
];
console.log(
  `${CHECKS_PER_BATCH * 5} checks, then ${CHECKS_PER_BATCH * 500} checks of ${STONES} stones, ms (median of ${RUNS})`,
);
let isMet = true;
for (const [what, key, target] of rows) {
  const met = target === null || large[key] <= target;
  isMet &&= met;
  const verdict = target === null ? '       ' : met ? 'met    ' : 'NOT MET';
  const growth = (large[key] / small[key]).toFixed(1);
  console.log(
    `${verdict} ${what}: ${small[key].toFixed(0)} → ${large[key].toFixed(0)} (× ${growth})${target === null ? '' : `, target ≤ ${target}`}`,
  );
}
process.exitCode = isMet ? 0 : 1;
