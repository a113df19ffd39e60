import { expect, it } from 'vitest';
import { orCalledOff, partOf, tellerOf } from '../../src/progress/watch';

const isAbort = expect.objectContaining({ name: 'AbortError' });

it('tells shares of a part as shares of the whole, and only when they grow', () => {
  const told: number[] = [];
  const tell = tellerOf(partOf({ onProgress: (share) => told.push(share) }, 0.5, 1));
  for (const share of [0, 0.5, 0.25, 1, 3]) tell(share);
  expect(told).toEqual([0.75, 1]);
});

it('stops parts with the whole', () => {
  const controller = new AbortController();
  const tell = tellerOf(partOf({ signal: controller.signal }, 0, 0.5));
  tell(0.1);
  controller.abort();
  expect(() => tell(0.2)).toThrow(isAbort);
});

it('waits for what cannot be stopped, but not once it is called off', async () => {
  const never = new Promise<string>(() => undefined);
  expect(await orCalledOff({}, Promise.resolve('done'))).toBe('done');
  const controller = new AbortController();
  const { signal } = controller;
  expect(await orCalledOff({ signal }, Promise.resolve('done'))).toBe('done');
  await expect(orCalledOff({ signal }, Promise.reject(new Error('broken')))).rejects.toThrow('broken');
  const waiting = orCalledOff({ signal }, never);
  controller.abort();
  await expect(waiting).rejects.toThrow(isAbort);
  await expect(orCalledOff({ signal }, never)).rejects.toThrow(isAbort);
});
