import { afterEach, expect, it } from 'vitest';
import type { FrameKnowledge, PreviewClient } from '../../src/camera/preview';
import { openPreview } from '../../src/worker/previewClient';
import { inventedRig } from '../helpers/inventedRig';
import { plainPhoto } from '../helpers/plainPhoto';

const LOOK: FrameKnowledge = { ballMm: 16, rig: null, ball: null, outline: true, checkLamp: true };

let client: PreviewClient<ImageBitmap, Blob>;
afterEach(() => client.close());

const frame = async () => createImageBitmap(await plainPhoto(640, 480));

it('has a state, not an error, for a frame without a ball', async () => {
  client = openPreview();
  const preview = await client.look(await frame(), LOOK);
  expect(preview).toMatchObject({
    widthPx: 640,
    heightPx: 480,
    ball: null,
    stones: null,
    refusal: 'no-ball',
  });
});

it('never queues: while it looks at one frame, others are let go at once', async () => {
  client = openPreview();
  const frames = await Promise.all([frame(), frame(), frame()]);
  const looks = frames.map((one) => client.look(one, LOOK));
  expect(await looks[1]).toBeNull();
  expect(await looks[2]).toBeNull();
  expect(await looks[0]).not.toBeNull();
  expect(frames.map(({ width }) => width)).toEqual([0, 0, 0]);
  expect(await client.look(await frame(), LOOK)).not.toBeNull();
});

it('measures sharpness, of which an even picture has none, and says so when a photo cannot be decoded', async () => {
  client = openPreview();
  expect(await client.sharpnessOf(await plainPhoto(640, 480))).toBe(0);
  await expect(client.sharpnessOf(new Blob(['Dear stones']))).rejects.toThrow(
    'The live picture could not be looked at',
  );
});

it('aborts what is under way when it is closed, and all that comes after', async () => {
  client = openPreview();
  const look = client.look(await frame(), LOOK);
  client.close();
  await expect(look).rejects.toMatchObject({ name: 'AbortError' });
  await expect(client.look(await frame(), LOOK)).rejects.toMatchObject({ name: 'AbortError' });
});

it('looks on with a fresh worker when WebAssembly aborts', async () => {
  const rig = inventedRig();
  const aborting = () => new Worker(new URL('./abortingWorker.ts', import.meta.url), { type: 'module' });
  const real = () =>
    new Worker(new URL('../../src/worker/analysisWorker.ts', import.meta.url), { type: 'module' });
  const workers = [aborting];
  client = openPreview(() => (workers.shift() ?? real)());
  const outlined: FrameKnowledge = { ballMm: null, rig, ball: null, outline: true, checkLamp: true };
  await expect(client.look(await frame(), outlined)).rejects.toThrow(/out of bounds|unreachable|abort/);
  expect(await client.look(await frame(), outlined)).toMatchObject({ widthPx: 640 });
});
