import type { AnalysisOptions, FoundStones, Stage } from '../../src/analysis/options';
import type { PhotoReport } from '../../src/analysis/report';
import type { Analyze } from '../../src/state/measureQueue';

/** One call of the analysis, to be ended by the test. */
export interface HeldCall {
  readonly file: Blob;
  /** Further shots of the scene. */
  readonly shots: readonly Blob[];
  /** The same tray with the lamp elsewhere, or null. */
  readonly lampMoved: Blob | null;
  readonly options: AnalysisOptions;
  readonly signal: AbortSignal;
  readonly onProgress: (stage: Stage, share: number, found?: FoundStones) => void;
  readonly resolve: (report: PhotoReport) => void;
  readonly reject: (error: unknown) => void;
}

/** An analysis that takes photos and does nothing until the test says how each one ends. */
export function heldAnalysis(): { readonly analyze: Analyze; readonly calls: readonly HeldCall[] } {
  const calls: HeldCall[] = [];
  const analyze: Analyze = ([file, ...shots], options, { signal, onProgress }, lampMoved) =>
    new Promise((resolve, reject) => {
      calls.push({ file, shots, lampMoved, options, signal, onProgress, resolve, reject });
      signal.addEventListener('abort', () => reject(new DOMException('Stopped.', 'AbortError')));
    });
  return { analyze, calls };
}

/** Lets everything that waits for a settled promise happen. */
export function settled(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}
