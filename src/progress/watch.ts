/** How a long piece of work is watched and called off. */
export interface Watch {
  /** Once it is aborted, the work stops and rejects with its reason, which is an `AbortError` unless another was given. */
  readonly signal?: AbortSignal;
  /** Is told how much is done: 0 to 1, never less than before. */
  readonly onProgress?: (share: number) => void;
}

/** Tells how much is done, 0 to 1, and throws the signal's reason once work was called off: for work that waits by itself. */
export function tellerOf({ signal, onProgress }: Watch): (share: number) => void {
  let told = 0;
  return (share) => {
    const now = Math.min(1, share);
    if (now > told) {
      told = now;
      onProgress?.(now);
    }
    signal?.throwIfAborted();
  };
}

/** The watch of a part of the work that reaches from one share of the whole to another. */
export function partOf({ signal, onProgress }: Watch, from: number, to: number): Watch {
  return {
    ...(signal ? { signal } : {}),
    ...(onProgress ? { onProgress: (share) => onProgress(from + share * (to - from)) } : {}),
  };
}

/**
 * Waits for something that cannot be stopped, such as the browser's own decoders, but no longer than until the work is
 * called off; what comes then is dropped.
 *
 * @throws The signal's reason, or what was waited for does.
 */
export async function orCalledOff<T>({ signal }: Watch, waitedFor: Promise<T>): Promise<T> {
  if (!signal) return waitedFor;
  let stop = () => {};
  const calledOff = new Promise<never>((_, reject) => {
    stop = () => reject(signal.reason);
    signal.addEventListener('abort', stop);
    if (signal.aborted) stop();
  });
  try {
    return await Promise.race([waitedFor, calledOff]);
  } finally {
    signal.removeEventListener('abort', stop);
  }
}
