import { createRoot, type Root } from 'react-dom/client';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { batchDigest } from '../../src/history/batchDigest';
import { type BatchRecords, batchHistory } from '../../src/history/batchHistory';
import { openJournal } from '../../src/journal/openJournal';
import { batchPoster } from '../../src/picture/batchPoster';
import { beforeAfterCard } from '../../src/picture/beforeAfterCard';
import { createJournalStore } from '../../src/state/journalStore';
import { keptPhoto } from '../../src/state/keptPhoto';
import { createPhotoStore } from '../../src/state/photoStore';
import { createSettingsStore } from '../../src/state/settingsStore';
import { createUndoStore } from '../../src/state/undoStore';
import { createWorkStore } from '../../src/state/workStore';
import { cardOf } from '../../src/ui/keepsake/cardOf';
import { posterOf } from '../../src/ui/keepsake/posterOf';
import { SaveBatchPoster } from '../../src/ui/keepsake/SaveBatchPoster';
import { SaveBeforeAfter } from '../../src/ui/keepsake/SaveBeforeAfter';
import { StoresContext } from '../../src/ui/stores';
import '../../src/styles/all.css';
import { inventedBatch } from '../helpers/inventedBatch';
import { NOT_ASKED } from '../helpers/notAsked';

let place: HTMLElement;
let root: Root;
/** Files handed to the person, by name. */
let saved: Map<string, Promise<ImageBitmap>>;

/** Keeps a download from leaving the page. */
const caught = (event: MouseEvent) => {
  const link = event.target as HTMLAnchorElement;
  if (!link.download) return;
  event.preventDefault();
  const file = fetch(link.href).then((answer) => answer.blob());
  saved.set(
    link.download,
    file.then((blob) => createImageBitmap(blob)),
  );
};
const realClick = HTMLAnchorElement.prototype.click;

beforeEach(() => {
  place = document.body.appendChild(document.createElement('div'));
  root = createRoot(place);
  saved = new Map();
  // The link that saves is never put into the page, so its click is caught at its source.
  HTMLAnchorElement.prototype.click = function click(this: HTMLAnchorElement) {
    this.addEventListener('click', caught, { once: true });
    realClick.call(this);
  };
});

afterEach(() => {
  HTMLAnchorElement.prototype.click = realClick;
  root.unmount();
  place.remove();
});

/** Two checks, each with a photo of one color; the second one's was kept at half size. */
function batchOf(count: number): BatchRecords {
  const stones = Array.from({ length: count }, () => ({ alpha: 0.02 }));
  const records = inventedBatch(
    [
      { step: 'coarse', day: 7, stones },
      { step: 'polish', day: 70, stones },
    ],
    { material: 'agate' },
  );
  const checks = records.checks.map((check, i) => ({ ...check, photo: i === 0 ? 'red' : 'blue' }));
  return { ...records, checks };
}

async function keptBitmaps(key: string): Promise<ImageBitmap> {
  const canvas = new OffscreenCanvas(key === 'red' ? 1800 : 900, key === 'red' ? 1200 : 600);
  const context = canvas.getContext('2d')!;
  context.fillStyle = key === 'red' ? '#c00000' : '#0000c0';
  context.fillRect(0, 0, canvas.width, canvas.height);
  return createImageBitmap(canvas);
}

async function show(records: BatchRecords) {
  const settings = createSettingsStore(null);
  const photos = createPhotoStore({
    analyze: () => new Promise(() => undefined),
    commonOptions: () => ({ ballMm: 16, rig: null }),
  });
  const journal = createJournalStore(() => openJournal('keepsake test'), keptPhoto);
  journal.setState({ batches: [batchDigest(records)] });
  const history = batchHistory(records);
  root.render(
    <StoresContext
      value={{
        photos,
        settings,
        journal,
        isExample: false,
        undo: createUndoStore(),
        ...NOT_ASKED,
        works: createWorkStore(),
        keptBitmaps,
      }}
    >
      <SaveBeforeAfter history={history.stones[0]!} />
      <SaveBatchPoster history={history} />
    </StoresContext>,
  );
  await expect.poll(() => place.querySelectorAll('button').length).toBeGreaterThan(0);
  return history;
}

/** Presses the button of that name and waits for its file. */
async function press(word: string): Promise<[name: string, picture: ImageBitmap]> {
  const before = saved.size;
  const button = [...place.querySelectorAll('button')].find((one) => one.textContent?.includes(word));
  button!.click();
  await expect.poll(() => saved.size, { timeout: 20_000 }).toBe(before + 1);
  const [name, picture] = [...saved].at(-1)!;
  return [name, await picture];
}

function pixelsOf(picture: ImageBitmap) {
  const context = new OffscreenCanvas(picture.width, picture.height).getContext('2d')!;
  context.drawImage(picture, 0, 0);
  const { data, width } = context.getImageData(0, 0, picture.width, picture.height);
  return (x: number, y: number) => [
    ...data.subarray(
      4 * (Math.round(y) * width + Math.round(x)),
      4 * (Math.round(y) * width + Math.round(x)) + 3,
    ),
  ];
}
const isRed = ([r = 0, g = 0, b = 0]: number[]) => r > 150 && g < 20 && b < 20;
const isBlue = ([r = 0, g = 0, b = 0]: number[]) => b > 150 && r < 20 && g < 20;

it('saves before and after with both photographs, each at its place', async () => {
  const records = batchOf(12);
  const history = await show(records);
  const [name, picture] = await press('before and after');
  expect(name).toBe('Stone-1-before-and-after.png');
  expect([picture.width, picture.height]).toEqual([1600, 1200]);
  const at = pixelsOf(picture);
  const { card } = cardOf(history.stones[0]!, batchDigest(records))!;
  expect(card.weeksInCoarse).toBe(1);
  const { places } = beforeAfterCard(card);
  expect(isRed(at(places[0]!.x, places[0]!.y))).toBe(true);
  expect(isBlue(at(places[1]!.x, places[1]!.y))).toBe(true);
  const corner = at(8, 8);
  expect(Math.min(...corner)).toBeGreaterThan(200);
  await expect.poll(() => place.querySelector('[role=status]')?.textContent).toBe('Saved.');
});

it('saves the poster with every stone as its last check shows it', async () => {
  const history = await show(batchOf(40));
  const [name, picture] = await press('poster');
  expect(name).toBe('Brook-pebbles-poster.png');
  const expected = batchPoster(posterOf(history)!.poster);
  expect([picture.width, picture.height]).toEqual([expected.widthPx, expected.heightPx]);
  expect(expected.places).toHaveLength(40);
  const at = pixelsOf(picture);
  // Photos of 1200 px show the rows of stones above their lower edge.
  const seen = expected.places.filter(({ middle }) => middle[0] < 1000);
  expect(seen.length).toBeGreaterThan(20);
  for (const { x, y } of seen) expect(isBlue(at(x, y))).toBe(true);
});

it('draws a plain pebble where no photograph was kept', async () => {
  const records = batchOf(3);
  const checks = records.checks.map((check) => ({ ...check, photo: null }));
  const history = await show({ ...records, checks });
  const [, picture] = await press('before and after');
  const { places } = beforeAfterCard(cardOf(history.stones[0]!, null)!.card);
  const [red, green, blue] = pixelsOf(picture)(places[0]!.x, places[0]!.y);
  expect(Math.max(red!, green!, blue!) - Math.min(red!, green!, blue!)).toBeLessThan(30);
  expect(red).toBeLessThan(215);
});

it('offers no before and after to a stone checked once, and names files by any script', async () => {
  const records = batchOf(2);
  const once = {
    ...records,
    batch: { ...records.batch, name: 'אבני הנחל / 2026' },
    checks: records.checks.slice(1),
  };
  await show(once);
  expect(place.querySelectorAll('button')).toHaveLength(1);
  const [name] = await press('poster');
  expect(name).toBe('אבני-הנחל-2026-poster.png');
});

it('says so when a picture cannot be drawn', async () => {
  const records = batchOf(2);
  const history = batchHistory(records);
  await show(records);
  root.render(
    <StoresContext
      value={{
        photos: createPhotoStore({
          analyze: () => new Promise(() => undefined),
          commonOptions: () => ({ ballMm: 16, rig: null }),
        }),
        settings: createSettingsStore(null),
        journal: createJournalStore(() => openJournal('keepsake test'), keptPhoto),
        isExample: false,
        undo: createUndoStore(),
        ...NOT_ASKED,
        works: createWorkStore(),
        keptBitmaps: () => Promise.reject(new Error('the photo is damaged')),
      }}
    >
      <SaveBatchPoster history={history} />
    </StoresContext>,
  );
  await expect.poll(() => place.querySelectorAll('button').length).toBe(1);
  place.querySelector('button')!.click();
  await expect.poll(() => place.querySelector('[role=alert]')?.textContent).toMatch(/could not be saved/);
});
