import { StrictMode, startTransition } from 'react';
import { createRoot } from 'react-dom/client';
import { Router } from 'wouter';
import { useHashLocation } from 'wouter/use-hash-location';
import { openOffline } from './offline/openOffline';
import { takeSharedPhotos } from './offline/sharedPhotos';
import { followOtherPages } from './state/followOtherPages';
import { createJournalStore } from './state/journalStore';
import type { KeptAs } from './state/keepCheck';
import { keepVisit } from './state/keepVisit';
import { keptPhoto } from './state/keptPhoto';
import { openExample } from './state/openExample';
import { openSample } from './state/openSample';
import { createPhotoStore } from './state/photoStore';
import { createSettingsStore } from './state/settingsStore';
import type { TrayPhoto } from './state/trayPhoto';
import { createUndoStore } from './state/undoStore';
import { createWorkStore } from './state/workStore';
import { languageFor } from './texts/languages';
import { openTexts } from './texts/openTexts';
import { speak, speech } from './texts/speech';
import { App } from './ui/App';
import { keptBitmaps } from './ui/journal/keptBitmaps';
import { UpdateLine } from './ui/offline/UpdateLine';
import { BrokenScreen } from './ui/parts/BrokenScreen';
import { asNewPhoto } from './ui/photo/useDroppedPhotos';
import { StoresContext } from './ui/stores';
import { openAnalysis } from './worker/analysisClient';
import { openPictures } from './worker/openPictures';
import { openPreview } from './worker/previewClient';

const EXAMPLE = new URL('../sample-images/example-year.zip', import.meta.url).href;
const SAMPLE = new URL('../sample-images/coarse-tray.jpg', import.meta.url).href;
const SAMPLE_PICTURE = new URL('../sample-images/coarse-tray.small.webp', import.meta.url).href;

/** From a frame that is drawn until it is surely on the screen, ms; slow computers were seen to take 100. */
const FRAME_SEEN_MS = 300;
/** Name of the cache of the photos at hand. */
const AT_HAND = 'glintgrade visit';

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

/** Speaks as the settings say, once the texts of the language are there. */
async function speakAsSet(): Promise<void> {
  const { language: chosen, units } = settings.getState();
  const language = languageFor(chosen, navigator.languages);
  const texts = language === speech().language ? speech().texts : await openTexts(language);
  speak({ language, texts, length: units.length });
  document.documentElement.lang = language;
}

const photos = createPhotoStore({
  analyze: async (files, options, watching, lampMoved) => {
    // The engines take every core: the page is drawn first.
    await idle();
    return (await client.analyze(files, options, watching, lampMoved)).report;
  },
  commonOptions: () => {
    const { ballMm, noBall, rig } = settings.getState();
    return { ballMm: noBall ? null : ballMm, rig };
  },
});

// The example year lies in a journal of its own, so that it never mixes with the owner's.
const isExample = new URLSearchParams(location.search).has('example');
const database = isExample ? 'glintgrade example' : 'glintgrade journal';
const journal = createJournalStore(
  async () => {
    const { openJournal } = await import('./journal/openJournal');
    return openJournal(database, isExample ? null : `${database} copy`);
  },
  (file, watch) => keptPhoto(file, watch, pictureOf),
);
followOtherPages(journal, database);
const works = createWorkStore();
/** The example is large: the screen comes first. */
function fillExample(): void {
  if (!isExample) return;
  const said = () => speech().texts.work.openingExample;
  const fill = () => void works.getState().run(said, (watch) => openExample(journal, EXAMPLE, watch));
  void onScreen().then(fill);
}

settings.subscribe(({ rig, rigDay }, before) => {
  if (rig === null || rig === before.rig) return;
  void journal.getState().say([{ kind: 'rig', name: speech().texts.journal.rigOf(rigDay), rig }]);
});
// Asked once something is kept: browsers may clear what was not promised to stay.
const stop = journal.subscribe(({ keptAs }) => {
  if (Object.keys(keptAs).length === 0) return;
  stop();
  void navigator.storage?.persist?.();
});

settings.subscribe((now, before) => {
  if (now.language !== before.language || now.units !== before.units) void speakAsSet();
});
/** Shows the page. */
function show(): void {
  const place = document.getElementById('page');
  if (place === null) throw new Error('index.html has no element with the id "page".');
  const root = createRoot(place);
  // In small steps, so that a tap in between is heard.
  startTransition(() =>
    root.render(
      <StrictMode>
        <StoresContext
          value={{
            photos,
            settings,
            journal,
            undo: createUndoStore(),
            works,
            isExample,
            pictureOf,
            openPreview,
            samplePicture: SAMPLE_PICTURE,
            keptBitmaps: keptBitmaps(journal.getState().photoOf),
          }}
        >
          <BrokenScreen place="">
            <Router hook={useHashLocation}>
              <App onShown={fillExample} />
              <UpdateLine offline={offline} />
            </Router>
          </BrokenScreen>
        </StoresContext>
      </StrictMode>,
    ),
  );
}

/** Photos shared from another app, else those at hand when the page was closed, else the sample. */
async function openPhotos(): Promise<void> {
  const back = isExample ? 0 : bringBackPhotos();
  const files = await takeSharedPhotos();
  if (files.length > 0) {
    await back;
    return photos.getState().add(files.map(asNewPhoto));
  }
  await trayShown();
  // A first visit has nothing to bring back: the sample need not wait for the storage.
  if (isExample || !(await mayExist(AT_HAND)) || (await back) === 0)
    await openSample(photos, SAMPLE, samplePictureShown);
}
// Nothing is awaited at the top of this module: a language's texts need modules that are built into its file, which
// would wait for it in turn.
void speakAsSet()
  .catch(() => undefined)
  .then(() => {
    show();
    void openPhotos();
  });

/** Loads the sample's small picture and lets it be drawn. */
async function samplePictureShown(): Promise<void> {
  const image = new Image();
  image.src = SAMPLE_PICTURE;
  await image.decode().catch(() => undefined);
  await onScreen();
}

/** Waits until what the page shows now is seen; in the background, until it is looked at. Browsers do not all tell. */
async function onScreen(): Promise<void> {
  await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, FRAME_SEEN_MS)));
  await idle();
}

/** Waits until the page has nothing to do, half a second at most; not at all where the browser does not tell. */
function idle(): Promise<void> {
  return new Promise((resolve) => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => resolve(), { timeout: 500 });
    else resolve();
  });
}

/** @returns How many came back. */
function bringBackPhotos(): Promise<number> {
  const open = async () => (await import('./journal/openVisit')).openVisit<TrayPhoto, KeptAs>(AT_HAND);
  return keepVisit({ photos, journal }, open, import.meta.url);
}

/** Whether there is a cache of that name; true where the browser does not tell. */
async function mayExist(name: string): Promise<boolean> {
  try {
    return await caches.has(name);
  } catch {
    return true;
  }
}

/** Waits until the tray is shown: the other screens do without the sample and the engines that measure it. */
function trayShown(): Promise<void> {
  return new Promise((resolve) => {
    const look = () => {
      if (!/^#?\/?$/.test(location.hash)) return;
      window.removeEventListener('hashchange', look);
      resolve();
    };
    window.addEventListener('hashchange', look);
    look();
  });
}
