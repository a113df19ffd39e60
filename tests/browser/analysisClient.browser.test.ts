import { afterEach, expect, it } from 'vitest';
import type { AnalysisOptions } from '../../src/analysis/options';
import { Refusal } from '../../src/image/notice';
import { type AnalysisClient, openAnalysis } from '../../src/worker/analysisClient';
import { inventedRig } from '../helpers/inventedRig';
import { plainPhoto } from '../helpers/plainPhoto';

const OPTIONS: AnalysisOptions = { ballMm: 16, ballAt: null, rig: null };
const EMPTY = new Blob([]);
const LETTER = new Blob(['Dear stones, please shine.']);

let client: AnalysisClient;
afterEach(() => client.close());

/** How an analysis ended: a refusal's code, an error's name, or "measured". */
function endOf(analysis: Promise<unknown>): Promise<string> {
  return analysis.then(
    () => 'measured',
    (error) => (error instanceof Refusal ? error.code : error.name),
  );
}

it('brings a refusal out of the worker with its code and sentence', async () => {
  client = openAnalysis();
  const refusal = await client.analyze([LETTER], OPTIONS).catch((error: unknown) => error);
  expect(refusal).toBeInstanceOf(Refusal);
  expect(refusal).toMatchObject({ code: 'not-an-image', message: expect.stringContaining('choose a JPEG') });
});

it('takes photos one at a time, in the order asked for', async () => {
  client = openAnalysis();
  const ended: string[] = [];
  const photos = [await plainPhoto(600, 400), EMPTY, LETTER];
  const names = ['plain', 'empty', 'letter'];
  await Promise.all(
    photos.map((photo, i) => endOf(client.analyze([photo], OPTIONS)).then(() => ended.push(names[i] ?? ''))),
  );
  expect(ended).toEqual(names);
});

it('tells how far it is, beginning with decoding', async () => {
  client = openAnalysis();
  const seen: [stage: string, share: number][] = [];
  await endOf(
    client.analyze([await plainPhoto(600, 400)], OPTIONS, {
      onProgress: (stage, share) => seen.push([stage, share]),
    }),
  );
  expect(seen.slice(0, 2)).toEqual([
    ['decode', 0],
    ['decode', 1],
  ]);
  expect(seen.every(([, share]) => share >= 0 && share <= 1)).toBe(true);
});

it('stops at once when aborted at work, says no more, and takes the next photo', async () => {
  client = openAnalysis();
  const stop = new AbortController();
  let toldAfterwards = 0;
  const onProgress = () => {
    if (stop.signal.aborted) toldAfterwards++;
    stop.abort();
  };
  const first = client.analyze([await plainPhoto(1600, 1200)], OPTIONS, { signal: stop.signal, onProgress });
  expect(await endOf(first)).toBe('AbortError');
  expect(await endOf(client.analyze([EMPTY], OPTIONS))).toBe('empty-file');
  expect(toldAfterwards).toBe(0);
});

it('says why shots that do not fit together are refused', async () => {
  client = openAnalysis();
  const shots = [await plainPhoto(600, 400), await plainPhoto(400, 600)] as const;
  expect(await endOf(client.analyze(shots, OPTIONS))).toBe('exposures-differ-in-size');
});

it('drops a photo aborted while it waits', async () => {
  client = openAnalysis();
  const stop = new AbortController();
  const ends = [
    endOf(client.analyze([LETTER], OPTIONS)),
    endOf(client.analyze([LETTER], OPTIONS, { signal: stop.signal })),
    endOf(client.analyze([EMPTY], OPTIONS)),
  ];
  stop.abort();
  expect(await Promise.all(ends)).toEqual(['not-an-image', 'AbortError', 'empty-file']);
  expect(await endOf(client.analyze([EMPTY], OPTIONS, { signal: stop.signal }))).toBe('AbortError');
});

it('explains a crash and starts afresh with the next photo', async () => {
  const crashing = () => new Worker(new URL('./crashingWorker.ts', import.meta.url), { type: 'module' });
  const real = () =>
    new Worker(new URL('../../src/worker/analysisWorker.ts', import.meta.url), { type: 'module' });
  const workers = [crashing, real];
  client = openAnalysis(() => (workers.shift() ?? real)());
  await expect(client.analyze([LETTER], OPTIONS)).rejects.toThrow(
    /^The analysis broke off \(.*out of memory\): try the photo again\.$/,
  );
  expect(await endOf(client.analyze([LETTER], OPTIONS))).toBe('not-an-image');
});

it('gives the next photo a fresh worker when WebAssembly aborts within an analysis', async () => {
  const aborting = () => new Worker(new URL('./abortingWorker.ts', import.meta.url), { type: 'module' });
  const real = () =>
    new Worker(new URL('../../src/worker/analysisWorker.ts', import.meta.url), { type: 'module' });
  const started: string[] = [];
  client = openAnalysis(() => {
    started.push(started.length === 0 ? 'aborting' : 'real');
    return started.length === 1 ? aborting() : real();
  });
  const byRig: AnalysisOptions = { ballMm: null, ballAt: null, rig: inventedRig() };
  const plain = await plainPhoto(600, 400);
  const waiting = [client.analyze([plain], byRig), client.analyze([plain], byRig)] as const;
  const failure = await waiting[0].catch((error: unknown) => error);
  expect(failure).not.toBeInstanceOf(Refusal);
  expect(String(failure)).toMatch(/The analysis failed: .*(out of bounds|unreachable|abort)/);
  expect(await endOf(waiting[1])).toBe('no-stone');
  expect(await endOf(client.analyze([plain], byRig))).toBe('no-stone');
  expect(started).toEqual(['aborting', 'real']);
});

it('aborts everything when it is closed', async () => {
  client = openAnalysis();
  const ends = [endOf(client.analyze([LETTER], OPTIONS)), endOf(client.analyze([LETTER], OPTIONS))];
  client.close();
  expect(await Promise.all(ends)).toEqual(['AbortError', 'AbortError']);
});
