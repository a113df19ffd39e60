import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Rig } from '../analysis/report';
import { dayToday } from './dayToday';
import { readSettings, writeSettings } from './keptSettings';
import type { Settings } from './settings';

export interface SettingsState extends Settings {
  readonly change: (part: Partial<Settings>) => void;
  /** Remembers lamp and camera of a photo with a ball, for photos without one. */
  readonly keepRig: (rig: Rig) => void;
}

/**
 * Holds what a person chose, and remembers it across visits.
 *
 * @param storage - Where to remember; null, or a storage that refuses, makes it forget at the end of the visit.
 */
export function createSettingsStore(
  storage: Pick<Storage, 'getItem' | 'setItem'> | null,
): StoreApi<SettingsState> {
  const store = createStore<SettingsState>()((set) => ({
    ...readSettings(storage),
    change: (part) => set(part),
    keepRig: (rig) => set({ rig, rigDay: dayToday() }),
  }));
  store.subscribe((state) => writeSettings(storage, state));
  return store;
}
