import { useCallback, useState } from 'react';
import type { NewPhoto } from '../state/photoStore';
import { Cautions } from './cautions/Cautions';
import { FirstVisit } from './cautions/FirstVisit';
import { PhotoButtons } from './photo/PhotoButtons';
import { useDroppedPhotos } from './photo/useDroppedPhotos';
import { Setup } from './setup/Setup';
import { useStoreActions } from './stores';
import { TrayScreen } from './tray/TrayScreen';

/** The whole page. */
export function App() {
  const { add } = useStoreActions();
  const [open, setOpen] = useState<'setup' | 'cautions' | null>(null);
  const over = useDroppedPhotos(useCallback((photos: NewPhoto[]) => add(photos), [add]));
  return (
    <div className="page" data-dropping={over}>
      <header className="masthead">
        <h1>
          <svg className="masthead-stone" viewBox="0 0 40 32" aria-hidden="true" focusable="false">
            <path d="M4 19C3 10 11 3 21 3.5S38 10 37 19S29 29 20 29S5 27 4 19Z" />
            <path className="masthead-glint" d="M15 8.5V15.5M11.5 12H18.5" />
          </svg>
          Glintgrade
        </h1>
        <button type="button" className="button button-quiet" onClick={() => setOpen('cautions')}>
          Safety
        </button>
        <button type="button" className="button button-quiet" onClick={() => setOpen('setup')}>
          Setup
        </button>
      </header>
      <main>
        <FirstVisit onRead={() => setOpen('cautions')} />
        <TrayScreen onSetup={() => setOpen('setup')} />
      </main>
      <footer className="thumb-bar">
        <PhotoButtons />
        <p className="privacy">Photos stay on this device: nothing is sent anywhere.</p>
      </footer>
      {over && (
        <p className="drop-hint" role="status">
          Let go to measure
        </p>
      )}
      {open === 'cautions' && <Cautions onClose={() => setOpen(null)} />}
      {open === 'setup' && <Setup onClose={() => setOpen(null)} />}
    </div>
  );
}
