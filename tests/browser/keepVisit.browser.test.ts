import { expect, it } from 'vitest';
import { openJournal } from '../../src/journal/openJournal';
import { openVisit } from '../../src/journal/openVisit';
import { createJournalStore } from '../../src/state/journalStore';
import { keepVisit, type PhotoVisit } from '../../src/state/keepVisit';
import { createPhotoStore } from '../../src/state/photoStore';
import { heldAnalysis, settled } from '../helpers/heldAnalysis';
import { inventedReport } from '../helpers/inventedReport';

/** The page's stores as they are after it was opened. */
function openStores() {
  const held = heldAnalysis();
  const photos = createPhotoStore({
    analyze: held.analyze,
    commonOptions: () => ({ ballMm: 16, rig: null }),
  });
  const journal = createJournalStore(
    () => openJournal(`visit test ${Math.random()}`),
    () => Promise.reject(new Error('Nothing is kept in this test.')),
  );
  return { photos, journal, calls: held.calls };
}

const opening = (name: string) => (): Promise<PhotoVisit> => openVisit(name);

async function entriesIn(name: string) {
  const visit = await opening(name)();
  return visit.all();
}

async function leaveOnePhoto(name: string): Promise<void> {
  const page = openStores();
  expect(await keepVisit(page, opening(name), 'first edition')).toBe(0);
  page.photos.getState().add([{ name: 'a.jpg', file: new Blob(['a']) }]);
  page.calls[0]?.resolve(inventedReport(2));
  await settled();
  await expect.poll(async () => (await entriesIn(name))[0]?.photo.status).toBe('measured');
}

it('brings back a measured photo as it was', async () => {
  const name = `visit ${Math.random()}`;
  await leaveOnePhoto(name);
  const page = openStores();
  expect(await keepVisit(page, opening(name), 'first edition')).toBe(1);
  const [photo] = page.photos.getState().photos;
  expect(photo).toMatchObject({ name: 'a.jpg', status: 'measured' });
  expect(photo?.report?.stones).toHaveLength(2);
  expect(await photo?.file.text()).toBe('a');
  expect(page.calls).toHaveLength(0);
});

it('measures anew what another edition of the program measured', async () => {
  const name = `visit ${Math.random()}`;
  await leaveOnePhoto(name);
  const page = openStores();
  await keepVisit(page, opening(name), 'second edition');
  expect(page.photos.getState().photos[0]?.status).toBe('measuring');
  expect(await page.calls[0]?.file.text()).toBe('a');
});

it('measures a photo that was still waiting when the page was closed', async () => {
  const name = `visit ${Math.random()}`;
  const page = openStores();
  await keepVisit(page, opening(name), 'first edition');
  page.photos.getState().add([{ name: 'late.jpg', file: new Blob(['late']) }]);
  await expect.poll(async () => (await entriesIn(name)).length).toBe(1);
  const again = openStores();
  await keepVisit(again, opening(name), 'first edition');
  expect(again.calls).toHaveLength(1);
});

it('numbers the photos of the visit behind those that came meanwhile', async () => {
  const name = `visit ${Math.random()}`;
  await leaveOnePhoto(name);
  const page = openStores();
  page.photos.getState().add([{ name: 'b.jpg', file: new Blob(['b']) }]);
  await keepVisit(page, opening(name), 'first edition');
  expect(page.photos.getState().photos.map(({ id, name: said }) => [id, said])).toEqual([
    [1, 'b.jpg'],
    [2, 'a.jpg'],
  ]);
  await expect
    .poll(async () => (await entriesIn(name)).map(({ photo }) => photo.name))
    .toEqual(['a.jpg', 'b.jpg']);
});

it('goes on without remembering where the browser forbids storage', async () => {
  const page = openStores();
  const refused = () => Promise.reject(new DOMException('forbidden', 'SecurityError'));
  expect(await keepVisit(page, refused, 'first edition')).toBe(0);
  page.photos.getState().add([{ name: 'a.jpg', file: new Blob(['a']) }]);
  expect(page.photos.getState().photos[0]?.status).toBe('measuring');
});
