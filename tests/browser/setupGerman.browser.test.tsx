import { createRoot } from 'react-dom/client';
import { afterEach, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { openJournal } from '../../src/journal/openJournal';
import { createJournalStore } from '../../src/state/journalStore';
import { keptPhoto } from '../../src/state/keptPhoto';
import { createPhotoStore } from '../../src/state/photoStore';
import { createSettingsStore } from '../../src/state/settingsStore';
import { createUndoStore } from '../../src/state/undoStore';
import { english } from '../../src/texts/english/english';
import { german } from '../../src/texts/german/german';
import { speak } from '../../src/texts/speech';
import { BallChoice } from '../../src/ui/setup/BallChoice';
import { GradingChoices } from '../../src/ui/setup/GradingChoices';
import { LimitsChoice } from '../../src/ui/setup/LimitsChoice';
import { RigPart } from '../../src/ui/setup/RigPart';
import { StoresContext } from '../../src/ui/stores';
import { NOT_ASKED } from '../helpers/notAsked';
import '../../src/styles/all.css';
import { inventedReport } from '../helpers/inventedReport';
import { inventedRig } from '../helpers/inventedRig';

let away = () => {};
afterEach(() => {
  away();
  speak({ language: 'en', texts: english, length: 'mm' });
});

/** Shows what Setup and the tray ask for, in German and inches. */
async function show() {
  speak({ language: 'de', texts: german, length: 'inch' });
  const settings = createSettingsStore(null);
  const report = { ...inventedReport(2), rig: inventedRig() };
  const photos = createPhotoStore({
    analyze: async () => report,
    commonOptions: () => ({ ballMm: 16, rig: null }),
  });
  const journal = createJournalStore(() => openJournal('setup in German test'), keptPhoto);
  photos.getState().add([{ name: 'tray', file: new Blob() }]);
  const place = document.body.appendChild(document.createElement('div'));
  const root = createRoot(place);
  const undo = createUndoStore();
  root.render(
    <StoresContext value={{ ...{ photos, settings, journal, undo, isExample: false }, ...NOT_ASKED }}>
      <GradingChoices />
      <BallChoice />
      <RigPart />
      <LimitsChoice />
    </StoresContext>,
  );
  away = () => {
    root.unmount();
    place.remove();
  };
  await expect.poll(() => place.querySelectorAll('.rig-facts li').length).toBe(5);
  return { place, settings };
}

const fieldOf = (place: HTMLElement, label: string) =>
  [...place.querySelectorAll('label')]
    .find(({ textContent }) => textContent?.startsWith(label))!
    .querySelector('input')!;

it('takes the ball and the limits in inches and keeps them in millimeters', async () => {
  const { place, settings } = await show();
  const ball = fieldOf(place, 'Durchmesser der dunklen Glaskugel (in)');
  expect(ball.value).toBe('0,63');
  await userEvent.fill(ball, '0.75');
  // 1 inch is 25.4 mm. Source: NIST SP 811, appendix B.8.
  expect(settings.getState().ballMm).toBeCloseTo(0.75 * 25.4, 9);
  const shortest = fieldOf(place, 'Kürzester Stein zum Weiterschleifen (in)');
  await userEvent.fill(shortest, '0.5');
  expect(settings.getState().limits.coarse.minLengthMm).toBeCloseTo(12.7, 9);
  expect(shortest.value).toBe('0.5');
  const most = fieldOf(place, 'Grübchen, höchstens (je Quadratzoll)');
  await userEvent.fill(most, '3.5');
  expect(settings.getState().limits.coarse.maxPitsPerCm2).toBeCloseTo(3.5 / 2.54 ** 2, 9);
  const share = fieldOf(place, 'Ein Fehler zählt ab dieser Sicherheit');
  expect(share.value).toBe('0,5');
});

it('fits a phone in German, its steps side by side', async () => {
  const { place } = await show();
  expect(innerWidth).toBe(390);
  expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(390);
  const steps = [...place.querySelectorAll<HTMLElement>('.step')];
  expect(steps.map(({ textContent }) => textContent)).toEqual([
    ...['grob', 'mittel', 'fein', 'Vorpolitur', 'Politur'],
  ]);
  for (const step of steps) {
    expect(step.scrollWidth).toBeLessThanOrEqual(step.clientWidth);
    expect(step.getBoundingClientRect().top).toBe(steps[0]!.getBoundingClientRect().top);
  }
  const options = [...place.querySelectorAll('option')].slice(1).map(({ textContent }) => textContent!);
  expect(options).toEqual([...options].sort(new Intl.Collator('de').compare));
  expect(options).toContain(german.verdicts.materials.agate);
});
