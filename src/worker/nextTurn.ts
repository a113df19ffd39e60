const { port1, port2 } = new MessageChannel();
const waiting: (() => void)[] = [];
port1.onmessage = () => waiting.shift()?.();

/** Waits until the messages that have already come in are read; unlike a timer, without a minimum delay. */
export function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    waiting.push(resolve);
    port2.postMessage(null);
  });
}
