import { expect, it } from 'vitest';
import { paceOf } from '../../src/progress/pace';

/** Work that holds the page up for so long, ms. */
function hold(ms: number): void {
  const until = performance.now() + ms;
  while (performance.now() < until);
}

it('tells shares of the whole, each part within its own bounds, and never less than before', async () => {
  const told: number[] = [];
  const pace = paceOf({ onProgress: (share) => told.push(share) });
  const [first, second] = [pace.part(0, 0.5), pace.part(0.5, 1)];
  await first.at(0.5);
  await first.at(0.25);
  await first.at(1);
  await second.part(0, 0.5).at(1);
  await second.at(2);
  expect(told).toEqual([0.25, 0.5, 0.75, 1]);
});

it('stops with the reason given, or with an AbortError where none was', async () => {
  const plain = new AbortController();
  const pace = paceOf({ signal: plain.signal });
  await pace.at(0.1);
  plain.abort();
  await expect(pace.at(0.2)).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }));
  await expect(pace.part(0.2, 1).at(0)).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }));
  const reason = new Error('The power went.');
  await expect(paceOf({ signal: AbortSignal.abort(reason) }).at(0)).rejects.toBe(reason);
});

it('lets others have their turn in work that never waits, and hears them call it off', async () => {
  const controller = new AbortController();
  const pace = paceOf({ signal: controller.signal });
  // A message is what a tap on Cancel is to the work: it comes in only when the work pauses.
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => controller.abort();
  port2.postMessage(null);
  let pieces = 0;
  const work = async () => {
    for (; pieces < 100; pieces++) {
      hold(2);
      await pace.at(pieces / 100);
    }
  };
  await expect(work()).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }));
  port1.close();
  expect(pieces).toBeLessThan(40);
});
