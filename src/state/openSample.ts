import type { StoreApi } from 'zustand/vanilla';
import type { PhotoState } from './photoStore';

/**
 * Opens the sample tray, unless the person was faster with a photo of their own; without it the page just starts empty.
 *
 * @param address - Of one of the page's own files.
 */
export async function openSample(photos: StoreApi<PhotoState>, address: string): Promise<void> {
  try {
    const answer = await fetch(address);
    if (!answer.ok) return;
    const file = await answer.blob();
    if (photos.getState().photos.length === 0)
      photos.getState().add([{ name: 'Sample tray', file, sample: true }]);
  } catch {
    // Offline on a first visit: there is no sample, and the person's own photos work all the same.
  }
}
