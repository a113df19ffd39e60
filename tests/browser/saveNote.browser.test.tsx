import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import { type Journal, openJournal } from '../../src/journal/openJournal';
import { recordId } from '../../src/journal/recordId';
import type { CheckRecord } from '../../src/journal/records';
import { bundleOf } from '../../src/state/journalExchange';
import { createJournalStore } from '../../src/state/journalStore';
import { createPhotoStore } from '../../src/state/photoStore';
import { createSettingsStore } from '../../src/state/settingsStore';
import { createUndoStore } from '../../src/state/undoStore';
import { createWorkStore } from '../../src/state/workStore';
import { JournalScreen } from '../../src/ui/journal/JournalScreen';
import { StoresContext } from '../../src/ui/stores';
import '../../src/styles/all.css';
import '../../src/styles/journal.css';
import { batchRecord } from '../helpers/batchRecord';

const never = () => Promise.reject(new Error('Not asked for here.'));
let root: Root;
let journal: Journal;
let store: ReturnType<typeof createJournalStore>;
const saved: string[] = [];

/** The journal's screen on a real journal; files that it saves are only named. */
beforeEach(async () => {
  store = createJournalStore(() => openJournal(`save note ${Math.random()}`), never);
  journal = await store.getState().opened;
  saved.length = 0;
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    saved.push(this.download);
  });
  root = createRoot(document.body.appendChild(document.createElement('div')));
  const stores = {
    photos: createPhotoStore({ analyze: never, commonOptions: () => ({ ballMm: null, rig: null }) }),
    settings: createSettingsStore(null),
    ...{ journal: store, undo: createUndoStore(), works: createWorkStore() },
    ...{ isExample: false, openPreview: () => never() as never, keptBitmaps: never },
  };
  root.render(
    <StoresContext value={stores}>
      <JournalScreen />
    </StoresContext>,
  );
});

afterEach(() => {
  vi.restoreAllMocks();
  root.unmount();
  document.body.replaceChildren();
  journal.close();
});

/** Adds checks that were never made. */
async function add(count: number): Promise<void> {
  const batch = batchRecord(recordId(), 'Brook pebbles');
  const checks = Array.from(
    { length: count },
    (): CheckRecord => ({
      ...{ kind: 'check', id: recordId(), batch: batch.id, faceOf: null, step: 'coarse', material: null },
      ...{ limits: DEFAULT_LIMITS.coarse, day: '2026-03-09', mmPerPx: 0.12, longestPx: 2000, photo: null },
      stones: [],
    }),
  );
  await journal.add([batch, ...checks]);
  await store.getState().refresh();
}

const saveButton = () => page.getByRole('button', { name: 'Save the journal' });

it('says in small print what is in no saved file, and when browsers clear a journal', async () => {
  await add(2);
  await expect.element(page.getByText('In no saved file yet: 2 photos, since')).toBeVisible();
  await userEvent.click(page.getByText('When a browser clears a journal'));
  await expect.element(page.getByText('A saved file brings all of it back')).toBeVisible();
  expect(saveButton().elements()).toHaveLength(1);
});

it('asks to save much, and is content once it is saved', async () => {
  await add(40);
  const note = page.getByRole('complementary', { name: 'In no saved file' });
  await expect.element(note.getByText('40 photos kept since')).toBeVisible();
  await note.getByRole('button', { name: 'Save the journal' }).click();
  await expect.element(page.getByText('All of it also lies in a saved file.')).toBeVisible();
  expect(note.elements()).toHaveLength(0);
  expect(saved).toEqual([expect.stringMatching(/^glintgrade-\d{4}-\d\d-\d\d\.zip$/)]);
  await expect.element(page.getByText('Saved: records and photos in one file.')).toBeVisible();
  await add(3);
  await expect.element(page.getByText('In no saved file yet: 3 photos, since')).toBeVisible();
});

it('takes what came out of a file for saved', async () => {
  const other = await openJournal(`save note, other ${Math.random()}`);
  const batch = batchRecord(recordId(), 'Shore pebbles');
  await other.add([batch]);
  const file = new File([await bundleOf(other)], 'other.zip');
  other.close();
  await store.getState().refresh();
  await userEvent.upload(page.getByLabelText('Take in a journal'), file);
  await expect.element(page.getByText('All of it also lies in a saved file.')).toBeVisible();
});
