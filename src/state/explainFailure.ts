import { REFUSALS, type RefusalCode, refusalSentence } from '../image/notice';
import { texts } from '../texts/speech';
import type { TrayPhoto } from './trayPhoto';

type Trouble = Pick<TrayPhoto, 'status' | 'code' | 'detail'>;

/**
 * Why a photo was not measured, to be put into words when it is shown.
 *
 * @param error - What the analysis was rejected with: a refusal carries a `code`.
 * @param signal - Aborted when the person stopped the work themselves.
 */
export function explainFailure(error: unknown, signal: AbortSignal): Trouble {
  if (signal.aborted) return { status: 'cancelled', code: null, detail: null };
  const code = refusalCode(error);
  if (code !== null) return { status: 'refused', code, detail: null };
  return { status: 'failed', code: null, detail: error instanceof Error ? error.message : String(error) };
}

/** The whole sentence for the person, in the language spoken now; null for a photo without trouble. */
export function troubleSentence({ status, code, detail }: Trouble): string | null {
  if (status === 'cancelled') return texts().notices.stopped;
  if (status === 'refused' && code !== null) return refusalSentence(code);
  return status === 'failed' ? texts().notices.failed(detail ?? '') : null;
}

function refusalCode(error: unknown): RefusalCode | null {
  if (!(error instanceof Error && error.name === 'Refusal' && 'code' in error)) return null;
  return REFUSALS.find((known) => known === error.code) ?? null;
}
