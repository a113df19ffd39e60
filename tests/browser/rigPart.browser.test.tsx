import { createRoot, type Root } from 'react-dom/client';
import { afterEach, expect, it } from 'vitest';
import type { PhotoReport } from '../../src/analysis/report';
import { openJournal } from '../../src/journal/openJournal';
import { createJournalStore } from '../../src/state/journalStore';
import { keptPhoto } from '../../src/state/keptPhoto';
import { createPhotoStore } from '../../src/state/photoStore';
import { createSettingsStore } from '../../src/state/settingsStore';
import { createUndoStore } from '../../src/state/undoStore';
import { RigPart } from '../../src/ui/setup/RigPart';
import { StoresContext } from '../../src/ui/stores';
import { NOT_ASKED } from '../helpers/notAsked';
import '../../src/styles/all.css';
import { inventedReport } from '../helpers/inventedReport';
import { inventedRig } from '../helpers/inventedRig';

let root: Root | null = null;
let place: HTMLElement;

afterEach(() => {
  root?.unmount();
  place.remove();
});

const withBall: PhotoReport = { ...inventedReport(2), rig: inventedRig() };

/** Shows the part for a photo whose measurement comes out as given. */
async function show(report: PhotoReport, sample = false) {
  const settings = createSettingsStore(null);
  const photos = createPhotoStore({
    analyze: async () => report,
    commonOptions: () => ({ ballMm: 16, rig: null }),
  });
  const journal = createJournalStore(() => openJournal('rig part test'), keptPhoto);
  photos.getState().add([{ name: 'tray', file: new Blob(), sample }]);
  place = document.body.appendChild(document.createElement('div'));
  root = createRoot(place);
  root.render(
    <StoresContext
      value={{ ...{ photos, settings, journal, isExample: false, undo: createUndoStore() }, ...NOT_ASKED }}
    >
      <RigPart />
    </StoresContext>,
  );
  await expect.poll(() => place.querySelector('h3')?.textContent).toBe('Lamp and camera');
  return settings;
}

const button = (name: string) =>
  [...place.querySelectorAll('button')].find(({ textContent }) => textContent === name);
const tick = () => place.querySelector<HTMLInputElement>('input[type=checkbox]')!;

it('says what the ball told, remembers it on request, and only then can do without the ball', async () => {
  const settings = await show(withBall);
  await expect.poll(() => place.querySelectorAll('.rig-facts li').length).toBe(5);
  expect(place.querySelector('svg')?.getAttribute('aria-label')).toContain('30° off the camera');
  expect(place.querySelector('[role=status]')?.textContent).toBe('Nothing is remembered yet.');
  expect(tick().disabled).toBe(true);
  button('Remember this lamp and camera')!.click();
  await expect
    .poll(() => place.querySelector('[role=status]')?.textContent)
    .toMatch(/^Remembered on .+ \d{4}\.$/);
  expect(settings.getState().rig).toEqual(inventedRig());
  expect(place.querySelector('.rig-check')?.textContent).toBe('This photo is the one remembered.');
  expect(place.querySelectorAll('button')).toHaveLength(0);
  tick().click();
  await expect.poll(() => settings.getState().noBall).toBe(true);
});

it('marks what to better about lamp and camera', async () => {
  await show({ ...withBall, rig: { ...inventedRig(), lampRadiance: 40 } });
  await expect.poll(() => place.querySelectorAll('[data-wanting=true]').length).toBe(1);
  expect(place.querySelector('[data-wanting=true]')?.textContent).toContain('1½ stops darker');
});

it('compares the photo with what is remembered, and takes it over instead when asked', async () => {
  const rigCheck = {
    byBall: true,
    changes: ['lamp-moved'],
    lampOffDeg: 7,
    lampSizeRatio: 1,
    shadowTurnDeg: null,
    trayTilt: null,
    scaleRatio: 1,
    blurPx: null,
    exposureRatio: 1,
  } as const;
  const settings = await show({ ...withBall, rigCheck });
  settings.getState().keepRig({ ...inventedRig(), mmPerPx: 0.2 });
  await expect.poll(() => place.querySelector('.rig-check')?.textContent).toContain('7° off');
  button('Remember these instead')!.click();
  await expect.poll(() => settings.getState().rig?.mmPerPx).toBe(0.1);
});

it('does not let the sample be remembered, nor a photo without a ball', async () => {
  await show(withBall, true);
  await expect.poll(() => place.textContent).toContain('This is the sample.');
  expect(place.querySelectorAll('button')).toHaveLength(0);
  root?.unmount();
  place.remove();
  await show({ ...withBall, ball: null });
  await expect.poll(() => place.textContent).toContain('photograph the tray with the ball in it');
  expect(place.querySelectorAll('.rig-facts li')).toHaveLength(0);
  expect(place.querySelectorAll('button')).toHaveLength(0);
});

it('fits a phone, with controls as large as a wet thumb', async () => {
  await show(withBall);
  await expect.poll(() => place.querySelectorAll('button').length).toBe(1);
  expect(innerWidth).toBe(390);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
  for (const control of place.querySelectorAll('button, label.tick'))
    expect(control.getBoundingClientRect().height).toBeGreaterThanOrEqual(47.5);
});
