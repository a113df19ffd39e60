import { lazy, Suspense, useCallback, useState } from 'react';
import { Link, Route, Switch, useLocation } from 'wouter';
import type { NewPhoto } from '../state/photoStore';
import { Cautions } from './cautions/Cautions';
import { FirstVisit } from './cautions/FirstVisit';
import { Compare } from './compare/Compare';
import { BatchScreen } from './journal/BatchScreen';
import { JournalScreen } from './journal/JournalScreen';
import { StoneScreen } from './journal/StoneScreen';
import { PhotoButtons } from './photo/PhotoButtons';
import { useDroppedPhotos } from './photo/useDroppedPhotos';
import { Plan } from './plan/Plan';
import { Setup } from './setup/Setup';
import { useStoreActions } from './stores';
import { TrayScreen } from './tray/TrayScreen';

/** Many words and pictures that most visits do without. */
const HelpScreen = lazy(() =>
  import('./help/HelpScreen').then(({ HelpScreen: screen }) => ({ default: screen })),
);

/** The whole page. */
export function App() {
  const { add } = useStoreActions();
  const [place, go] = useLocation();
  const [open, setOpen] = useState<'setup' | 'cautions' | null>(null);
  const isTray = place === '/';
  const isJournal = place.startsWith('/journal') || place === '/compare';
  const drop = useCallback(
    (photos: NewPhoto[]) => {
      add(photos);
      go('/');
    },
    [add, go],
  );
  const over = useDroppedPhotos(drop);
  return (
    <div className="page" data-dropping={over}>
      <header className="masthead">
        <h1>
          <svg className="masthead-stone" viewBox="0 0 40 32" aria-hidden="true" focusable="false">
            <path d="M3 21C2 13 9 5 19 3.5C28 2 37 8 38 16C39 25 31 30 20 30C10 30 4 28 3 21Z" />
            <path className="masthead-glint" d="M9 17C10.5 12.5 14 9.5 18.5 8.6" />
          </svg>
          <span>Glintgrade</span>
        </h1>
        <nav className="masthead-places" aria-label="Places">
          <Link href="/" className="button button-quiet" aria-current={place === '/' ? 'page' : undefined}>
            Tray
          </Link>
          <Link href="/journal" className="button button-quiet" aria-current={isJournal ? 'page' : undefined}>
            Journal
          </Link>
          <Link
            href="/plan"
            className="button button-quiet"
            aria-current={place === '/plan' ? 'page' : undefined}
          >
            Plan
          </Link>
        </nav>
        <button type="button" className="button button-quiet" onClick={() => setOpen('cautions')}>
          Safety
        </button>
        <button type="button" className="button button-quiet" onClick={() => setOpen('setup')}>
          Setup
        </button>
      </header>
      <main>
        <FirstVisit onRead={() => setOpen('cautions')} />
        <Switch>
          <Route path="/journal/:batch/:stone">
            {({ batch, stone }) => <StoneScreen batch={batch} stone={stone} />}
          </Route>
          <Route path="/journal/:batch">{({ batch }) => <BatchScreen key={batch} batch={batch} />}</Route>
          <Route path="/compare">
            <Compare />
          </Route>
          <Route path="/help/:section?">
            {({ section }) => (
              <Suspense fallback={<p className="empty">Opening…</p>}>
                <HelpScreen section={section} />
              </Suspense>
            )}
          </Route>
          <Route path="/plan">
            <Plan />
          </Route>
          <Route path="/journal">
            <JournalScreen />
          </Route>
          <Route>
            <TrayScreen onSetup={() => setOpen('setup')} />
          </Route>
        </Switch>
      </main>
      {isTray && (
        <section className="thumb-bar" aria-label="Photos">
          <PhotoButtons />
        </section>
      )}
      <footer className="privacy">
        Photos never leave this device. <Link href="/help">Help</Link>
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
