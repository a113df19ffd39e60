import { createStore, type StoreApi } from 'zustand/vanilla';
import type { AnalysisOptions, Stage } from '../analysis/options';
import type { PhotoReport, PixelPoint, Rig } from '../analysis/report';
import { explainFailure } from './explainFailure';
import type { TrayPhoto } from './trayPhoto';

/** Measures one photo; rejects with a refusal, or with whatever `signal` was aborted for. */
export type Analyze = (
  file: Blob,
  options: AnalysisOptions,
  watch: { readonly signal: AbortSignal; readonly onProgress: (stage: Stage, share: number) => void },
) => Promise<PhotoReport>;

/** What the person says about every photo; what they say about one is kept with it. */
export type CommonOptions = Pick<AnalysisOptions, 'ballMm' | 'rig'>;

export interface NewPhoto {
  readonly name: string;
  readonly file: Blob;
  readonly sample?: boolean;
}

export interface PhotoState {
  readonly photos: readonly TrayPhoto[];
  readonly currentId: number | null;
  readonly selectedStone: number | null;
  /** Queues photos, shows the first of them and measures them one after the other. */
  readonly add: (photos: readonly NewPhoto[]) => void;
  readonly show: (id: number) => void;
  readonly selectStone: (id: number | null) => void;
  /** Stops measuring; the photo under way stays in the strip and the next one goes on. */
  readonly cancel: () => void;
  /** Measures the photo shown once more, as after a change of ball. */
  readonly measureAgain: () => void;
  /** Says where the ball lies in the photo shown, and measures it again. */
  readonly pointAtBall: (point: PixelPoint) => void;
}

const UNMEASURED = { progress: null, report: null, sentence: null, code: null } as const;

/**
 * Holds the photos of this visit and measures them one at a time.
 *
 * @param analyze - Measures one photo.
 * @param commonOptions - Read anew for every photo.
 * @param keepRig - Told lamp and camera of every photo that was measured with a ball in it.
 */
export function createPhotoStore(
  analyze: Analyze,
  commonOptions: () => CommonOptions,
  keepRig: (rig: Rig) => void = () => {},
): StoreApi<PhotoState> {
  let running: { readonly id: number; readonly stop: AbortController } | null = null;

  const store = createStore<PhotoState>()((set, get) => ({
    photos: [],
    currentId: null,
    selectedStone: null,
    add: (added) => {
      const last = get().photos.at(-1)?.id ?? 0;
      const fresh = added.map((photo, index): TrayPhoto => {
        const { name, file, sample = false } = photo;
        return { id: last + 1 + index, name, file, sample, status: 'waiting', ballAt: null, ...UNMEASURED };
      });
      const first = fresh[0];
      if (first === undefined) return;
      set({ photos: [...get().photos, ...fresh], currentId: first.id, selectedStone: null });
      void measureNext();
    },
    show: (id) => set({ currentId: id, selectedStone: null }),
    selectStone: (id) => set({ selectedStone: id }),
    cancel: () => running?.stop.abort(),
    measureAgain: () => requeue({}),
    pointAtBall: (ballAt) => requeue({ ballAt }),
  }));

  function change(id: number, part: Partial<TrayPhoto>): void {
    const photos = store.getState().photos.map((photo) => (photo.id === id ? { ...photo, ...part } : photo));
    store.setState({ photos });
  }

  function requeue(part: Partial<TrayPhoto>): void {
    const id = store.getState().currentId;
    if (id === null) return;
    if (running?.id === id) running.stop.abort();
    change(id, { ...part, ...UNMEASURED, status: 'waiting' });
    store.setState({ selectedStone: null });
    void measureNext();
  }

  async function measureNext(): Promise<void> {
    const { photos, currentId } = store.getState();
    const waiting = photos.filter((photo) => photo.status === 'waiting');
    const photo = waiting.find(({ id }) => id === currentId) ?? waiting[0];
    if (running !== null || photo === undefined) return;
    const own = { id: photo.id, stop: new AbortController() };
    running = own;
    change(photo.id, { status: 'measuring', progress: { stage: 'decode', share: 0 } });
    const outcome = await measure(photo, own.stop.signal);
    running = null;
    const overtaken = store.getState().photos.find(({ id }) => id === photo.id)?.status !== 'measuring';
    if (!overtaken) change(photo.id, { ...UNMEASURED, ...outcome });
    void measureNext();
  }

  async function measure(photo: TrayPhoto, signal: AbortSignal): Promise<Partial<TrayPhoto>> {
    const onProgress = (stage: Stage, share: number) => {
      if (!signal.aborted) change(photo.id, { progress: { stage, share } });
    };
    try {
      const options = { ...commonOptions(), ballAt: photo.ballAt };
      const report = await analyze(photo.file, options, { signal, onProgress });
      if (signal.aborted) return explainFailure(null, signal);
      if (report.ball !== null && !photo.sample) keepRig(report.rig);
      return { status: 'measured', report };
    } catch (error) {
      return explainFailure(error, signal);
    }
  }

  return store;
}
