import { inflateRawSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { readBundle } from '../../src/bundle/readBundle';
import { writeBundle } from '../../src/bundle/writeBundle';
import { packedPart, zipEntries } from '../../src/bundle/zipEntries';
import type { JournalRecord } from '../../src/journal/records';
import { inventedBatch, recordsOf } from '../helpers/inventedBatch';

const stones = Array.from({ length: 12 }, () => ({ pits: 2, alpha: 0.1 }));
const batch = inventedBatch(
  Array.from({ length: 30 }, (_, i) => ({ step: 'coarse' as const, day: 7 * i, stones })),
);
const records = JSON.parse(
  JSON.stringify(recordsOf(batch), (key, value) =>
    typeof value === 'string' && /^01B\d+$/.test(value) && key !== 'name' ? value.padEnd(26, '0') : value,
  ),
) as JournalRecord[];
const jpeg = (bytes: number) =>
  new Blob([Uint8Array.from({ length: bytes }, (_, i) => [0xff, 0xd8, 0xff][i] ?? (i * i) % 251)]);
const photos = Array.from({ length: 20 }, (_, i) => ({
  key: i.toString(16).padStart(64, '0'),
  photo: jpeg(300_000),
  thumbnail: jpeg(7000),
}));
const contents = { records, photos };

/** Shares that work tells until it has told one beyond `cancelAt` and is then called off. */
async function watched(work: (watch: object) => Promise<unknown>, cancelAt = 2) {
  const controller = new AbortController();
  const told: number[] = [];
  const onProgress = (share: number) => {
    told.push(share);
    if (share > cancelAt) controller.abort();
  };
  const outcome = await work({ signal: controller.signal, onProgress }).then(
    () => 'done',
    (error: Error) => error.name,
  );
  return { told, outcome };
}

it('tells how far writing and reading are, in many small steps up to the whole', async () => {
  const bundle = await writeBundle(contents);
  for (const work of [
    (watch: object) => writeBundle(contents, watch),
    (watch: object) => readBundle(bundle, watch),
  ]) {
    const { told, outcome } = await watched(work);
    expect(outcome).toBe('done');
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBeGreaterThan(0.97);
    const steps = told.map((share, i) => share - (told[i - 1] ?? 0));
    expect(Math.max(...steps)).toBeLessThan(0.1);
  }
});

it('stops wherever it is called off, in writing as in reading', async () => {
  const bundle = await writeBundle(contents);
  for (const share of [0, 0.1, 0.3, 0.5, 0.7, 0.9]) {
    expect((await watched((watch) => writeBundle(contents, watch), share)).outcome).toBe('AbortError');
    expect((await watched((watch) => readBundle(bundle, watch), share)).outcome).toBe('AbortError');
  }
});

it('does not begin what was called off before', async () => {
  const signal = AbortSignal.abort();
  const isAbort = expect.objectContaining({ name: 'AbortError' });
  await expect(writeBundle(contents, { signal })).rejects.toThrow(isAbort);
  await expect(readBundle(await writeBundle(contents), { signal })).rejects.toThrow(isAbort);
});

// RFC 1951 is the format; Node's zlib is a reader of its own.
it('packs a text of many pieces so that another program unpacks it', async () => {
  const bundle = await writeBundle(contents);
  const entry = (await zipEntries(bundle)).find(({ name }) => name === 'journal.json')!;
  expect(entry.bytes).toBeGreaterThan(4 * 2 ** 17);
  const packed = await (await packedPart(bundle, entry)).arrayBuffer();
  const text = inflateRawSync(packed).toString('utf8');
  expect(Buffer.byteLength(text)).toBe(entry.bytes);
  expect((JSON.parse(text) as { records: unknown[] }).records).toHaveLength(records.length);
});
