import { lazy, Suspense, useCallback, useEffect, useState } from 'react';
import { Link, Route, Switch, useLocation } from 'wouter';
import type { NewPhoto } from '../state/photoStore';
import { FirstVisit } from './cautions/FirstVisit';
import { BrokenScreen } from './parts/BrokenScreen';
import { UndoLine } from './parts/UndoLine';
import { WorkLines } from './parts/WorkLines';
import { PhotoButtons } from './photo/PhotoButtons';
import { useDroppedPhotos } from './photo/useDroppedPhotos';
import { useStoreActions } from './stores';
import { TrayScreen } from './tray/TrayScreen';
import { useSpeech } from './useSpeech';

// The tray is the first screen; what the others show is loaded with the first visit to them.
const BatchScreen = lazy(() =>
  import('./journal/BatchScreen').then(({ BatchScreen: screen }) => ({ default: screen })),
);
const Cautions = lazy(() =>
  import('./cautions/Cautions').then(({ Cautions: screen }) => ({ default: screen })),
);
const Compare = lazy(() => import('./compare/Compare').then(({ Compare: screen }) => ({ default: screen })));
const HelpScreen = lazy(() =>
  import('./help/HelpScreen').then(({ HelpScreen: screen }) => ({ default: screen })),
);
const JournalScreen = lazy(() =>
  import('./journal/JournalScreen').then(({ JournalScreen: screen }) => ({ default: screen })),
);
const Plan = lazy(() => import('./plan/Plan').then(({ Plan: screen }) => ({ default: screen })));
const RigGuideScreen = lazy(() =>
  import('./rigGuide/RigGuideScreen').then(({ RigGuideScreen: screen }) => ({ default: screen })),
);
const Setup = lazy(() => import('./setup/Setup').then(({ Setup: screen }) => ({ default: screen })));
const StartScreen = lazy(() =>
  import('./start/StartScreen').then(({ StartScreen: screen }) => ({ default: screen })),
);
const StoneScreen = lazy(() =>
  import('./journal/StoneScreen').then(({ StoneScreen: screen }) => ({ default: screen })),
);

/** Tells once that what stands beside it is there. */
function Shown({ onShown }: { onShown: () => void }) {
  useEffect(onShown, [onShown]);
  return null;
}

/**
 * The whole page.
 *
 * @param props.onShown - Called when the first screen is there.
 */
export function App({ onShown }: { onShown: () => void }) {
  const { add } = useStoreActions();
  const words = useSpeech().texts.page;
  const [place, go] = useLocation();
  const [open, setOpen] = useState<'setup' | 'cautions' | null>(null);
  const isTray = place === '/';
  const isJournal = ['/journal', '/compare', '/start'].some((start) => place.startsWith(start));
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
        <nav className="masthead-places" aria-label={words.places}>
          <Link href="/" className="button button-quiet" aria-current={place === '/' ? 'page' : undefined}>
            {words.tray}
          </Link>
          <Link href="/journal" className="button button-quiet" aria-current={isJournal ? 'page' : undefined}>
            {words.journal}
          </Link>
          <Link
            href="/plan"
            className="button button-quiet"
            aria-current={place === '/plan' ? 'page' : undefined}
          >
            {words.plan}
          </Link>
        </nav>
        <button type="button" className="button button-quiet" onClick={() => setOpen('cautions')}>
          <svg className="masthead-safety" viewBox="0 0 24 24" aria-hidden="true" focusable="false">
            <path d="M12 3.2C13 3.2 21.6 18 21 19.4C20.4 20.8 3.6 20.8 3 19.4C2.4 18 11 3.2 12 3.2ZM12 9v5M12 17v.2" />
          </svg>
          <span className="masthead-word">{words.safety}</span>
        </button>
        <button type="button" className="button button-quiet" onClick={() => setOpen('setup')}>
          {words.setup}
        </button>
      </header>
      <main>
        <FirstVisit onRead={() => setOpen('cautions')} />
        <BrokenScreen place={place}>
          <Suspense fallback={<p className="empty opening">{words.opening}</p>}>
            <Switch>
              <Route path="/journal/:batch/:stone">
                {({ batch, stone }) => <StoneScreen batch={batch} stone={stone} />}
              </Route>
              <Route path="/journal/:batch">{({ batch }) => <BatchScreen key={batch} batch={batch} />}</Route>
              <Route path="/compare">
                <Compare />
              </Route>
              <Route path="/help/:section?">{({ section }) => <HelpScreen section={section} />}</Route>
              <Route path="/rig">
                <RigGuideScreen onSetup={() => setOpen('setup')} />
              </Route>
              <Route path="/start">
                <StartScreen />
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
            <Shown onShown={onShown} />
          </Suspense>
        </BrokenScreen>
      </main>
      {isTray && (
        <section className="thumb-bar" aria-label={words.photos}>
          <PhotoButtons />
        </section>
      )}
      <WorkLines />
      <UndoLine />
      <footer className="privacy">
        {words.privacy} <Link href="/help">{words.help}</Link>
      </footer>
      {over && (
        <p className="drop-hint" role="status">
          {words.letGo}
        </p>
      )}
      <Suspense>
        {open === 'cautions' && <Cautions onClose={() => setOpen(null)} />}
        {open === 'setup' && <Setup onClose={() => setOpen(null)} />}
      </Suspense>
    </div>
  );
}
