import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Watch } from '../progress/watch';

/** Something that takes a while and is under way. */
export interface Work {
  readonly id: number;
  /** What is being done, in the language spoken when it is read. */
  readonly said: () => string;
  /** How much is done, 0 to 1. */
  readonly share: number;
  /** True once it was cancelled and has not yet stopped. */
  readonly isStopping: boolean;
  readonly cancel: () => void;
}

export interface WorkState {
  /** What has gone on for long enough to be shown, the oldest first. */
  readonly works: readonly Work[];
  /**
   * Does something that may take longer than a second, shown with its progress and a way to cancel it on every screen.
   *
   * @returns What the work gives; undefined when it was cancelled.
   * @throws What the work throws.
   */
  readonly run: <T>(
    said: () => string,
    work: (watch: Required<Watch>) => Promise<T>,
  ) => Promise<T | undefined>;
}

/** Work that is over sooner is not shown, ms: a line that only flashes up is in the way. */
const SHOWN_AFTER_MS = 300;
/** Shares that come closer together are not all shown, ms. */
const TOLD_EVERY_MS = 50;

/** Holds what is under way. */
export function createWorkStore(): StoreApi<WorkState> {
  let count = 0;
  return createStore<WorkState>()((set, get) => {
    const change = (id: number, part: Partial<Work>) =>
      set({ works: get().works.map((one) => (one.id === id ? { ...one, ...part } : one)) });
    return {
      works: [],
      run: async (said, work) => {
        const id = ++count;
        const controller = new AbortController();
        const { signal } = controller;
        let share = 0;
        let toldAt = 0;
        const onProgress = (now: number) => {
          share = now;
          if (performance.now() - toldAt < TOLD_EVERY_MS) return;
          toldAt = performance.now();
          change(id, { share });
        };
        const cancel = () => {
          change(id, { isStopping: true });
          controller.abort();
        };
        const shown = setTimeout(
          () => set({ works: [...get().works, { id, said, share, isStopping: false, cancel }] }),
          SHOWN_AFTER_MS,
        );
        try {
          return await work({ signal, onProgress });
        } catch (error) {
          if (signal.aborted) return undefined;
          throw error;
        } finally {
          clearTimeout(shown);
          set({ works: get().works.filter((one) => one.id !== id) });
        }
      },
    };
  });
}
