import type { StoreApi } from 'zustand/vanilla';
import type { PhotoState } from './photoStore';

/**
 * Opens the sample tray, unless the person was faster with a photo of their own; without it the page just starts empty.
 *
 * @param address - Of one of the page's own files.
 * @param picture - Brings a small picture of it to sight, which comes first: on a slow line the photo takes seconds.
 */
export async function openSample(
  photos: StoreApi<PhotoState>,
  address: string,
  picture: () => Promise<void>,
): Promise<void> {
  photos.setState({ sampleIsComing: true });
  try {
    await picture();
    const answer = await fetch(address);
    if (!answer.ok) return;
    const file = await answer.blob();
    if (photos.getState().photos.length === 0)
      photos.getState().add([{ name: 'Sample tray', file, sample: true }]);
  } catch {
    // Offline on a first visit: there is no sample, and the person's own photos work all the same.
  } finally {
    photos.setState({ sampleIsComing: false });
  }
}
