import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { StoreApi } from 'zustand/vanilla';
import type { PreviewClient } from '../camera/preview';
import { type GradedPhoto, gradePhoto } from '../state/gradePhoto';
import type { JournalState } from '../state/journalStore';
import { type MindedStone, withMinded } from '../state/mindedVerdicts';
import type { PhotoState } from '../state/photoStore';
import type { SettingsState } from '../state/settingsStore';
import type { TrayPhoto } from '../state/trayPhoto';
import type { UndoState } from '../state/undoStore';
import type { WorkState } from '../state/workStore';

export interface Stores {
  readonly photos: StoreApi<PhotoState>;
  readonly settings: StoreApi<SettingsState>;
  readonly journal: StoreApi<JournalState>;
  readonly undo: StoreApi<UndoState>;
  readonly works: StoreApi<WorkState>;
  /** Opens the worker that looks at the camera's frames. */
  readonly openPreview: () => PreviewClient<ImageBitmap, Blob>;
  /** True while the journal shown is the example's. */
  readonly isExample: boolean;
  /** A picture of a photo that the page can show: the photo itself, or a JPEG of a HEIC. */
  readonly pictureOf?: (photo: Blob) => Promise<Blob>;
  /** Address of the sample as a small picture, which is there long before the photo itself. */
  readonly samplePicture?: string;
  /** Decodes the journal's photos. */
  readonly keptBitmaps: (key: string) => Promise<ImageBitmap | null>;
}

/** Set once in main.tsx. */
export const StoresContext = createContext<Stores | null>(null);

function useStores(): Stores {
  const stores = useContext(StoresContext);
  if (stores === null) throw new Error('No stores: wrap the page in StoresContext.');
  return stores;
}

/** Reads from the photo store and follows it. */
export function usePhotos<Part>(select: (state: PhotoState) => Part): Part {
  return useStore(useStores().photos, select);
}

/** Reads from the settings store and follows it. */
export function useSettings<Part>(select: (state: SettingsState) => Part): Part {
  return useStore(useStores().settings, select);
}

/** Reads from the journal's store and follows it. */
export function useJournal<Part>(select: (state: JournalState) => Part): Part {
  return useStore(useStores().journal, select);
}

/** The photo store's actions, which never change. */
export function useStoreActions(): Pick<
  PhotoState,
  | 'add'
  | 'addShots'
  | 'cancel'
  | 'dropShots'
  | 'measureAgain'
  | 'pointAtBall'
  | 'remove'
  | 'restore'
  | 'selectStone'
  | 'setLampMoved'
> {
  return useStores().photos.getState();
}

/** The photo being shown, or null before the first one. */
export function useCurrentPhoto(): TrayPhoto | null {
  return usePhotos((state) => state.photos.find(({ id }) => id === state.currentId) ?? null);
}

/** Grades of the photo being shown under the present step, material and limits; null without a report. */
export function useGraded(): GradedPhoto | null {
  const report = useCurrentPhoto()?.report ?? null;
  const step = useSettings((state) => state.step);
  const material = useSettings((state) => state.material);
  const limits = useSettings((state) => state.limits);
  return report === null ? null : gradePhoto(report, { step, material, limits });
}

/** The way back from what was done last. */
export function useUndo(): UndoState {
  return useStore(useStores().undo);
}

/** What takes a while and is under way. */
export function useWorks(): WorkState['works'] {
  return useStore(useStores().works, (state) => state.works);
}

/** Does something that may take longer than a second: with progress, and a way to cancel it. */
export function useRun(): WorkState['run'] {
  return useStores().works.getState().run;
}

/** Gives a picture of a photo that the page can show. */
export function usePictureOf(): (photo: Blob) => Promise<Blob> {
  return useStores().pictureOf ?? asItIs;
}

const asItIs = (photo: Blob) => Promise.resolve(photo);

/** Decodes the journal's photos. */
export function useKeptBitmaps(): Stores['keptBitmaps'] {
  return useStores().keptBitmaps;
}

/** Stones of the photo being shown that the journal knows, by their places; null before it is kept. */
export function useMinded(): ReadonlyMap<number, MindedStone> | null {
  const photo = useCurrentPhoto();
  return useJournal((state) => (photo === null ? null : (state.minded[photo.id] ?? null)));
}

/** As `useGraded`, and once the photo is kept, with its stones' earlier checks and other sides in mind. */
export function useGradedInMind(): GradedPhoto | null {
  const graded = useGraded();
  const minded = useMinded();
  return graded !== null && minded !== null ? withMinded(graded, minded) : graded;
}

/** Whether the journal shown is the example's. */
export function useIsExample(): boolean {
  return useStores().isExample;
}

/** Opens the worker that looks at the camera's frames. */
export function useOpenPreview(): Stores['openPreview'] {
  return useStores().openPreview;
}

/** Address of the sample as a small picture; null without one. */
export function useSamplePicture(): string | null {
  return useStores().samplePicture ?? null;
}
