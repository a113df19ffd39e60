import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Router } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { openJournal } from './journal/openJournal';
import { openOffline } from './offline/openOffline';
import { takeSharedPhotos } from './offline/sharedPhotos';
import { createJournalStore } from './state/journalStore';
import { keptPhoto } from './state/keptPhoto';
import { openExample } from './state/openExample';
import { openSample } from './state/openSample';
import { createPhotoStore } from './state/photoStore';
import { createSettingsStore } from './state/settingsStore';
import { App } from './ui/App';
import { keptBitmaps } from './ui/journal/keptBitmaps';
import { UpdateLine } from './ui/offline/UpdateLine';
import { asNewPhoto } from './ui/photo/useDroppedPhotos';
import { StoresContext } from './ui/stores';
import { openAnalysis } from './worker/analysisClient';
import { openPictures } from './worker/openPictures';
import { openPreview } from './worker/previewClient';

const EXAMPLE = new URL('../sample-images/example-year.zip', import.meta.url).href;
const SAMPLE = new URL('../sample-images/coarse-tray.jpg', import.meta.url).href;

/** The browser's storage; null where it is forbidden. */
function openStorage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

const client = openAnalysis();
const offline = openOffline(() => client.close());
const pictureOf = openPictures();
const settings = createSettingsStore(openStorage());
const photos = createPhotoStore({
  analyze: async (files, options, watching, lampMoved) =>
    (await client.analyze(files, options, watching, lampMoved)).report,
  commonOptions: () => {
    const { ballMm, noBall, rig } = settings.getState();
    return { ballMm: noBall ? null : ballMm, rig };
  },
});

// The example year lies in a journal of its own, so that it never mixes with the owner's.
const isExample = new URLSearchParams(location.search).has('example');
const journal = createJournalStore(
  () => openJournal(isExample ? 'glintgrade example' : undefined),
  async (file) => keptPhoto(file, await pictureOf(file)),
);
if (isExample) void openExample(journal, EXAMPLE);

settings.subscribe(({ rig, rigDay }, before) => {
  if (rig === null || rig === before.rig) return;
  void journal.getState().say([{ kind: 'rig', name: `Remembered on ${rigDay ?? 'an unknown day'}`, rig }]);
});
// Asked once something is kept: browsers may clear what was not promised to stay.
const stop = journal.subscribe(({ keptAs }) => {
  if (Object.keys(keptAs).length === 0) return;
  stop();
  void navigator.storage?.persist?.();
});

const place = document.getElementById('page');
if (place === null) throw new Error('index.html has no element with the id "page".');
createRoot(place).render(
  <StrictMode>
    <StoresContext
      value={{
        photos,
        settings,
        journal,
        isExample,
        pictureOf,
        openPreview,
        keptBitmaps: keptBitmaps(journal.getState().photoOf),
      }}
    >
      <Router hook={useHashLocation}>
        <App />
        <UpdateLine offline={offline} />
      </Router>
    </StoresContext>
  </StrictMode>,
);
void takeSharedPhotos().then((files) => {
  if (files.length === 0) return openSample(photos, SAMPLE);
  return photos.getState().add(files.map(asNewPhoto));
});
