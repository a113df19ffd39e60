import { createStore, type StoreApi } from 'zustand/vanilla';
import type { PixelPoint } from '../analysis/report';
import { changePhoto, createMeasureQueue, type Measuring } from './measureQueue';
import type { TrayPhoto } from './trayPhoto';

export interface NewPhoto {
  readonly name: string;
  readonly file: Blob;
  /** True for the made photo the page opens with. */
  readonly sample?: boolean;
}

export interface PhotoState {
  readonly photos: readonly TrayPhoto[];
  readonly currentId: number | null;
  readonly selectedStone: number | null;
  /** True while the made photo that the page opens with is on its way. */
  readonly sampleIsComing: boolean;
  /** Queues photos, shows the first of them and measures them one after the other. */
  readonly add: (photos: readonly NewPhoto[]) => void;
  readonly show: (id: number) => void;
  /** Puts photos back as they were, in the order of their ids; those that wait are measured. */
  readonly restore: (photos: readonly TrayPhoto[]) => void;
  /** Takes a photo away; the one before it is shown. */
  readonly remove: (id: number) => void;
  readonly selectStone: (id: number | null) => void;
  /** Stops measuring; the photo under way stays in the strip and the next one goes on. */
  readonly cancel: () => void;
  /** Measures the photo shown once more, as after a change of ball. */
  readonly measureAgain: () => void;
  /** Merges further shots of the scene, darker as a rule, with the photo shown, and measures it again. */
  readonly addShots: (shots: readonly Blob[]) => void;
  /** Takes those shots away again. */
  readonly dropShots: () => void;
  /** Measures the photo shown again beside one of the same tray with the lamp elsewhere; null takes that away. */
  readonly setLampMoved: (lampMoved: Blob | null) => void;
  /** Says where the ball lies in the photo shown, and measures it again. */
  readonly pointAtBall: (point: PixelPoint) => void;
}

const UNMEASURED = { status: 'waiting', progress: null, report: null, code: null, detail: null } as const;

function newPhoto({ name, file, sample = false }: NewPhoto, id: number): TrayPhoto {
  return { id, name, file, sample, shots: [], lampMoved: null, ballAt: null, ...UNMEASURED };
}

/**
 * Holds the photos of this visit and measures them one at a time.
 *
 * @param measuring - How a photo is measured, and with what options.
 */
export function createPhotoStore(measuring: Measuring): StoreApi<PhotoState> {
  const store = createStore<PhotoState>()((set, get) => ({
    photos: [],
    currentId: null,
    selectedStone: null,
    sampleIsComing: false,
    add: (added) => {
      const last = get().photos.at(-1)?.id ?? 0;
      const fresh = added.map((photo, index) => newPhoto(photo, last + 1 + index));
      if (fresh[0] === undefined) return;
      set({ photos: [...get().photos, ...fresh], currentId: fresh[0].id, selectedStone: null });
      void queue.measureNext();
    },
    show: (id) => set({ currentId: id, selectedStone: null }),
    restore: (back) => {
      const photos = [...get().photos, ...back].sort((a, b) => a.id - b.id);
      set({ photos, currentId: back.at(-1)?.id ?? get().currentId, selectedStone: null });
      void queue.measureNext();
    },
    remove: (id) => {
      queue.stop(id);
      const at = get().photos.findIndex((photo) => photo.id === id);
      const photos = get().photos.filter((photo) => photo.id !== id);
      const shown = get().currentId === id ? (photos[Math.max(0, at - 1)]?.id ?? null) : get().currentId;
      set({ photos, currentId: shown, selectedStone: null });
    },
    selectStone: (id) => set({ selectedStone: id }),
    cancel: () => queue.stop(),
    measureAgain: () => waitAgain({}),
    addShots: (shots) => {
      const shown = get().photos.find(({ id }) => id === get().currentId);
      if (shown && shots.length > 0) waitAgain({ shots: [...shown.shots, ...shots] });
    },
    dropShots: () => waitAgain({ shots: [] }),
    setLampMoved: (lampMoved) => waitAgain({ lampMoved }),
    pointAtBall: (ballAt) => waitAgain({ ballAt }),
  }));
  const queue = createMeasureQueue(store, measuring);

  function waitAgain(part: Partial<TrayPhoto>): void {
    const id = store.getState().currentId;
    if (id === null) return;
    queue.stop(id);
    changePhoto(store, id, { ...UNMEASURED, ...part });
    store.setState({ selectedStone: null });
    void queue.measureNext();
  }

  return store;
}
