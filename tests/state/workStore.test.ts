import { expect, it } from 'vitest';
import { createWorkStore } from '../../src/state/workStore';

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

it('shows work once it lasts, with its share, and cancels that one alone', async () => {
  const { getState } = createWorkStore();
  const long = (said: string) =>
    getState().run(
      () => said,
      async ({ signal, onProgress }) => {
        onProgress(0.25);
        while (!signal.aborted) await wait(10);
        onProgress(0.5);
        signal.throwIfAborted();
      },
    );
  const [first, second] = [long('first'), long('second')];
  expect(getState().works).toEqual([]);
  await expect
    .poll(() => getState().works.map(({ said, share }) => [said(), share]))
    .toEqual([
      ['first', 0.25],
      ['second', 0.25],
    ]);
  getState().works[0]!.cancel();
  expect(getState().works.map(({ isStopping }) => isStopping)).toEqual([true, false]);
  expect(await first).toBeUndefined();
  expect(getState().works.map(({ said }) => said())).toEqual(['second']);
  getState().works[0]!.cancel();
  expect(await second).toBeUndefined();
  expect(getState().works).toEqual([]);
});

it('gives what work gives although it was cancelled too late to stop', async () => {
  const { getState } = createWorkStore();
  const done = getState().run(
    () => 'saving',
    async () => wait(500).then(() => 'saved'),
  );
  await expect.poll(() => getState().works.length).toBe(1);
  getState().works[0]!.cancel();
  expect(await done).toBe('saved');
});

it('shows nothing of work that is over soon or fails, and passes its error on', async () => {
  const { getState, subscribe } = createWorkStore();
  let shown = 0;
  subscribe(({ works }) => {
    shown = Math.max(shown, works.length);
  });
  expect(
    await getState().run(
      () => 'quick',
      async () => 7,
    ),
  ).toBe(7);
  const failing = getState().run(
    () => 'failing',
    () => Promise.reject(new Error('broken')),
  );
  await expect(failing).rejects.toThrow('broken');
  await wait(400);
  expect(shown).toBe(0);
});
