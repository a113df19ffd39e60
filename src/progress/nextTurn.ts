/**
 * Lets whatever waits have its turn: taps, drawing, messages. Unlike a timer it has no least delay, and it is not held
 * back while the page is in the background.
 */
export function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
