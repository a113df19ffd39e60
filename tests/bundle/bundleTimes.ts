/** Prints size and time of a bundle: `node .config/run.mjs tests/bundle/bundleTimes.ts [CHECKS]`; 500 checks of 12 stones when left out. */
import { measurementsCsv } from '../../src/bundle/measurementsCsv';
import { readBundle } from '../../src/bundle/readBundle';
import { writeBundle } from '../../src/bundle/writeBundle';
import { batchHistory } from '../../src/history/batchHistory';
import type { JournalRecord } from '../../src/journal/records';
import { inventedBatch, recordsOf } from '../helpers/inventedBatch';

const STONES = 12;
/** As the command keeps a sample photo. */
const [PHOTO_BYTES, THUMBNAIL_BYTES] = [280_000, 7_000];

const count = Number(process.argv[2] ?? 500);
const ulidOf = (id: string) => id.padEnd(26, '0');
const keyOf = (i: number) => i.toString(16).padStart(64, '0');

function picture(bytes: number): Blob {
  const noise = Uint8Array.from({ length: bytes }, () => Math.floor(256 * Math.random()));
  noise.set([0xff, 0xd8, 0xff]);
  return new Blob([noise], { type: 'image/jpeg' });
}

async function timed<T>(what: string, work: () => T | Promise<T>): Promise<T> {
  const from = performance.now();
  const result = await work();
  const mib = Math.round(process.memoryUsage().rss / 2 ** 20);
  console.log(`${what}: ${Math.round(performance.now() - from)} ms, ${mib} MiB in memory`);
  return result;
}

const stones = Array.from({ length: STONES }, (_, i) => ({ pits: i % 4, alpha: 0.1 + 0.01 * i }));
const batch = inventedBatch(
  Array.from({ length: count }, (_, i) => ({ step: 'coarse', day: 7 * i, stones })),
);
const text = JSON.stringify(recordsOf(batch), (key, value) =>
  typeof value === 'string' && /^01B\d+$/.test(value) && key !== 'name' ? ulidOf(value) : value,
);
const records = JSON.parse(text) as JournalRecord[];
const [photo, thumbnail] = [picture(PHOTO_BYTES), picture(THUMBNAIL_BYTES)];
const photos = Array.from({ length: count }, (_, i) => ({ key: keyOf(i), photo, thumbnail }));

console.log(`${count} checks of ${STONES} stones: ${(text.length / 1e6).toFixed(1)} MB of JSON`);
const small = await timed('written without photos', () => writeBundle({ records, photos: [] }));
const bundle = await timed('written', () => writeBundle({ records, photos }));
console.log(
  `bundle: ${(bundle.size / 1e6).toFixed(1)} MB, ${(small.size / 1e6).toFixed(1)} MB without photos`,
);
await timed('read and checked', () => readBundle(bundle));
const csv = await timed('CSV', () => measurementsCsv([batchHistory(batch)]));
console.log(`CSV: ${(csv.length / 1e6).toFixed(1)} MB`);
