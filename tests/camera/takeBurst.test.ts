import { expect, it } from 'vitest';
import { BURST, takeBurst } from '../../src/ui/camera/takeBurst';

const signal = new AbortController().signal;
const blobs = [3, 1, 8, 2, 8].map((size) => new Blob(['x'.repeat(size)]));

it('keeps the sharpest photo, the first of several equals', async () => {
  const left = [...blobs];
  const numbers: number[] = [];
  const best = await takeBurst(
    async () => left.shift()!,
    async (photo) => photo.size,
    { onShot: (number) => numbers.push(number), signal },
  );
  expect(best).toBe(blobs[2]);
  expect(numbers).toEqual(Array.from({ length: BURST }, (_, i) => i + 1));
});

it('stops between photos when the camera is closed', async () => {
  const stop = new AbortController();
  let taken = 0;
  const burst = takeBurst(
    async () => blobs[taken++]!,
    async () => {
      if (taken === 2) stop.abort();
      return 1;
    },
    { onShot: () => {}, signal: stop.signal },
  );
  await expect(burst).rejects.toThrow('aborted');
  expect(taken).toBe(2);
});
