import { createStore, type StoreApi } from 'zustand/vanilla';

/** Something that was just done, and the way back. */
export interface Undoable {
  /** What was done, in the language spoken when it is read. */
  readonly said: () => string;
  readonly undo: () => void;
}

export interface UndoState {
  /** What was done last; null when there is no way back any more. */
  readonly last: Undoable | null;
  /** Offers the way back for what was just done, in place of whatever was offered before. */
  readonly done: (what: Undoable) => void;
  /** Goes back. */
  readonly undo: () => void;
  readonly forget: () => void;
}

/** Holds the way back from what was done last: nobody is asked whether they are sure. */
export function createUndoStore(): StoreApi<UndoState> {
  return createStore<UndoState>()((set, get) => ({
    last: null,
    done: (what) => set({ last: what }),
    undo: () => {
      const { last } = get();
      set({ last: null });
      last?.undo();
    },
    forget: () => set({ last: null }),
  }));
}
