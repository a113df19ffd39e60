import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { page } from 'vitest/browser';
import { writeBundle } from '../../src/bundle/writeBundle';
import { openJournal } from '../../src/journal/openJournal';
import type { JournalRecord } from '../../src/journal/records';
import { createJournalStore } from '../../src/state/journalStore';
import { keptPhoto } from '../../src/state/keptPhoto';
import { createPhotoStore } from '../../src/state/photoStore';
import { createSettingsStore } from '../../src/state/settingsStore';
import { createUndoStore } from '../../src/state/undoStore';
import { createWorkStore } from '../../src/state/workStore';
import { english } from '../../src/texts/english/english';
import { InAndOut } from '../../src/ui/journal/InAndOut';
import { WorkLines } from '../../src/ui/parts/WorkLines';
import { StoresContext } from '../../src/ui/stores';
import '../../src/styles/all.css';
import { inventedBatch, recordsOf } from '../helpers/inventedBatch';
import { NOT_ASKED } from '../helpers/notAsked';

let place: HTMLElement;
let root: Root;

beforeEach(() => {
  place = document.body.appendChild(document.createElement('div'));
  root = createRoot(place);
});

afterEach(() => {
  root.unmount();
  place.remove();
});

function show() {
  const works = createWorkStore();
  const journal = createJournalStore(() => openJournal(`work lines ${Math.random()}`), keptPhoto);
  const photos = createPhotoStore({
    analyze: () => new Promise(() => undefined),
    commonOptions: () => ({ ballMm: 16, rig: null }),
  });
  const stores = { photos, settings: createSettingsStore(null), journal, undo: createUndoStore() };
  root.render(
    <StoresContext value={{ ...stores, isExample: false, ...NOT_ASKED, works }}>
      <InAndOut />
      <WorkLines />
    </StoresContext>,
  );
  return { works: works.getState(), journal };
}

const bar = () => page.getByRole('progressbar', { name: english.work.soFar });
const cancel = () => page.getByRole('button', { name: english.work.cancel });
const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** As a bundle carries it: so many checks of twelve stones. */
function bundleOf(checks: number): Promise<Blob> {
  const stones = Array.from({ length: 12 }, () => ({ pits: 2, alpha: 0.1 }));
  const batch = inventedBatch(
    Array.from({ length: checks }, (_, i) => ({ step: 'coarse' as const, day: 7 * i, stones })),
  );
  const text = JSON.stringify(recordsOf(batch), (key, value) =>
    typeof value === 'string' && /^01B\d+$/.test(value) && key !== 'name' ? value.padEnd(26, '0') : value,
  );
  return writeBundle({ records: JSON.parse(text) as JournalRecord[], photos: [] });
}

/** Chooses a file as a person does. */
function choose(file: Blob): void {
  const input = place.querySelector<HTMLInputElement>('input[type=file]')!;
  const files = new DataTransfer();
  files.items.add(new File([file], 'journal.zip', { type: 'application/zip' }));
  input.files = files.files;
  input.dispatchEvent(new Event('change', { bubbles: true }));
}

it('shows what is done, how far it is, and stops it', async () => {
  const { works } = show();
  const asked = works.run(
    () => 'Grinding…',
    async ({ signal, onProgress }) => {
      for (let share = 0; share < 1; share += 0.01) {
        onProgress(share);
        await wait(100);
        signal.throwIfAborted();
      }
      return 'ground';
    },
  );
  await expect.element(page.getByText('Grinding…')).toBeVisible();
  await expect.element(bar()).toBeVisible();
  await expect.poll(() => (bar().element() as HTMLProgressElement).value).toBeGreaterThan(0.05);
  await cancel().click();
  expect(await asked).toBeUndefined();
  await expect.poll(() => place.querySelector('progress')).toBeNull();
});

it('shows nothing of what is over soon, and passes on what it gives or throws', async () => {
  const { works } = show();
  let seen = 0;
  const watching = setInterval(() => (seen += place.querySelectorAll('progress').length), 5);
  expect(
    await works.run(
      () => 'Quick',
      async () => wait(100).then(() => 7),
    ),
  ).toBe(7);
  await expect(
    works.run(
      () => 'Quick',
      () => Promise.reject(new Error('broken')),
    ),
  ).rejects.toThrow('broken');
  await wait(400);
  clearInterval(watching);
  expect(seen).toBe(0);
});

it('takes nothing in when it is cancelled, and all of it afterwards', async () => {
  const { journal } = show();
  const bundle = await bundleOf(400);
  await expect.poll(() => journal.getState().status).toBe('open');
  choose(bundle);
  await expect.element(page.getByText(english.work.takingIn)).toBeVisible();
  await cancel().click();
  await expect.element(page.getByText(english.work.notTakenIn)).toBeVisible();
  const opened = await journal.getState().opened;
  expect(await opened.recordIds()).toEqual([]);
  expect(journal.getState()).toMatchObject({ trouble: null, batches: [] });

  // The longest that the page stands still while all of it is taken in.
  let [longest, last] = [0, performance.now()];
  const watching = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 5);
  choose(bundle);
  await expect.element(page.getByText(/813 of 813 records are new/), { timeout: 30_000 }).toBeVisible();
  clearInterval(watching);
  console.info(`Longest standstill: ${Math.round(longest)} ms.`);
  expect(await opened.recordIds()).toHaveLength(813);
});
