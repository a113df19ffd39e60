import type { StoreApi } from 'zustand/vanilla';
import type { AnalysisOptions, FoundStones, Stage } from '../analysis/options';
import type { PhotoReport } from '../analysis/report';
import { explainFailure } from './explainFailure';
import type { PhotoState } from './photoStore';
import type { TrayPhoto } from './trayPhoto';

/** Measures one photo, or several shots of one scene; rejects with a refusal, or with whatever `signal` was aborted for. */
export type Analyze = (
  files: readonly [Blob, ...Blob[]],
  options: AnalysisOptions,
  watch: {
    readonly signal: AbortSignal;
    readonly onProgress: (stage: Stage, share: number, found?: FoundStones) => void;
  },
  lampMoved: Blob | null,
) => Promise<PhotoReport>;

/** What the queue needs of the rest of the page. */
export interface Measuring {
  readonly analyze: Analyze;
  /** What the person says about every photo, read anew for each. */
  readonly commonOptions: () => Pick<AnalysisOptions, 'ballMm' | 'rig'>;
}

/** The made photo has its own lamp, and a ball of the usual size. */
const SAMPLE_OPTIONS = { ballMm: 16, rig: null } as const;

export interface MeasureQueue {
  /** Starts on the next photo that waits, the one being shown first; does nothing while one is under way. */
  readonly measureNext: () => Promise<void>;
  /** Stops the photo under way, or only when it is the given one. */
  readonly stop: (id?: number) => void;
}

/**
 * Changes what is known of one photo in the store.
 *
 * @param id - Of a photo in the store; any other changes nothing.
 */
export function changePhoto(store: StoreApi<PhotoState>, id: number, part: Partial<TrayPhoto>): void {
  const photos = store.getState().photos.map((photo) => (photo.id === id ? { ...photo, ...part } : photo));
  store.setState({ photos });
}

/** Measures the photos of a store that wait, one at a time, and writes into the store what comes of it. */
export function createMeasureQueue(store: StoreApi<PhotoState>, measuring: Measuring): MeasureQueue {
  let running: { readonly id: number; readonly halt: AbortController } | null = null;

  async function measureNext(): Promise<void> {
    const { photos, currentId } = store.getState();
    const waiting = photos.filter((photo) => photo.status === 'waiting');
    const photo = waiting.find(({ id }) => id === currentId) ?? waiting[0];
    if (running !== null || photo === undefined) return;
    const own = { id: photo.id, halt: new AbortController() };
    running = own;
    changePhoto(store, photo.id, { status: 'measuring', progress: { stage: 'decode', share: 0 } });
    const outcome = await measure(store, measuring, photo, own.halt.signal);
    running = null;
    const asked = store.getState().photos.find(({ id }) => id === photo.id)?.status;
    if (asked === 'measuring') changePhoto(store, photo.id, { progress: null, ...outcome });
    void measureNext();
  }

  return {
    measureNext,
    stop: (id) => {
      if (id === undefined || running?.id === id) running?.halt.abort();
    },
  };
}

async function measure(
  store: StoreApi<PhotoState>,
  { analyze, commonOptions }: Measuring,
  photo: TrayPhoto,
  signal: AbortSignal,
): Promise<Partial<TrayPhoto>> {
  let known: FoundStones | undefined;
  const onProgress = (stage: Stage, share: number, found?: FoundStones) => {
    known = found ?? known;
    if (signal.aborted) return;
    changePhoto(store, photo.id, { progress: { stage, share, ...(known ? { found: known } : {}) } });
  };
  try {
    const common = photo.sample ? SAMPLE_OPTIONS : commonOptions();
    const options = { ...common, ballAt: photo.ballAt };
    const report = await analyze(
      [photo.file, ...photo.shots],
      options,
      { signal, onProgress },
      photo.lampMoved,
    );
    if (signal.aborted) return explainFailure(null, signal);
    return { status: 'measured', report };
  } catch (error) {
    return explainFailure(error, signal);
  }
}
