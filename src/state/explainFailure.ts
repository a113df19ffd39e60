import type { TrayPhoto } from './trayPhoto';

type Explained = Pick<TrayPhoto, 'status' | 'sentence' | 'code'>;

/**
 * Says in one sentence why a photo was not measured.
 *
 * @param error - What the analysis was rejected with: a refusal carries a `code` and its own sentence.
 * @param signal - Aborted when the person stopped the work themselves.
 */
export function explainFailure(error: unknown, signal: AbortSignal): Explained {
  if (signal.aborted) {
    return { status: 'cancelled', sentence: 'Stopped: this photo was not measured.', code: null };
  }
  if (
    error instanceof Error &&
    'code' in error &&
    typeof error.code === 'string' &&
    error.name === 'Refusal'
  ) {
    return { status: 'refused', sentence: error.message, code: error.code };
  }
  const detail = error instanceof Error ? error.message : String(error);
  const sentence = `Measuring this photo failed. Try it once more or take another. (${detail})`;
  return { status: 'failed', sentence, code: null };
}
