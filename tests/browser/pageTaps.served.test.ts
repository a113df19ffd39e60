import type { Locator, Page } from 'playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openServedApp } from '../helpers/servedApp';

/** A tray of twelve stones, and the same tray photographed upside down a week later. */
const TRAY = 'sample-images/polished-tray.jpg';
const STONES = 12;

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  page = watched.page;
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByText('Stopped: this photo was not measured.').waitFor();
  await page.evaluate(() => {
    const counted = window as unknown as { taps: number };
    counted.taps = 0;
    addEventListener('click', (event) => event.isTrusted && counted.taps++, true);
  });
}, 60_000);

afterAll(() => watched.close());

/** Taps since last asked. */
const taps = () =>
  page.evaluate(() => {
    const counted = window as unknown as { taps: number };
    const { taps: count } = counted;
    counted.taps = 0;
    return count;
  });

/** Chooses a photo as a person does; picking it in the system's window is one tap more. */
async function choose(photo: { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose photos' }).click(),
  ]);
  await chooser.setFiles(photo);
  await page
    .getByRole('button', { name: new RegExp(`^${photo.name} ${STONES} stones`) })
    .waitFor({ timeout: 150_000 });
}
const IN_THE_SYSTEM_WINDOW = 1;

const jpeg = async (name: string, turnDeg: number) => ({
  ...{ name, mimeType: 'image/jpeg' },
  buffer: await sharp(TRAY).rotate(turnDeg).withMetadata().jpeg({ quality: 95 }).toBuffer(),
});

it('reaches the first sorting picture of a fresh profile in three taps or fewer', async () => {
  await choose(await jpeg('first.jpg', 0));
  await page.locator('.sorting-picture svg').waitFor();
  expect((await taps()) + IN_THE_SYSTEM_WINDOW).toBeLessThanOrEqual(3);
}, 200_000);

it('checks a known tray of twelve stones in eight taps or fewer', async () => {
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByText('Kept in the journal under').waitFor();
  await page.clock.setFixedTime(new Date(Date.now() + 7 * 86_400_000));
  await taps();
  await choose(await jpeg('second.jpg', 180));
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await Promise.race([dialog.waitFor(), page.getByText('Kept in the journal under').waitFor()]);
  if (await dialog.isVisible()) await page.getByRole('button', { name: 'All right: keep' }).click();
  await page.getByText('Kept in the journal under').waitFor();
  expect((await taps()) + IN_THE_SYSTEM_WINDOW).toBeLessThanOrEqual(8);
}, 200_000);

/** Presses Tab until a control has the focus, and then Enter. */
async function reach(control: Locator): Promise<void> {
  for (let k = 0; k < 200; k++) {
    if (await control.evaluate((own) => own === document.activeElement)) return page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
  }
  throw new Error('The Tab key does not lead there.');
}

it('opens a stone, decides and reaches its history with the keyboard alone', async () => {
  await reach(page.locator('.token').first());
  await page.locator('.decide').waitFor();
  await reach(page.locator('.decide-action').filter({ hasText: 'Repeat' }));
  await page.locator('.decide-action[aria-pressed="true"]').waitFor();
  await reach(page.locator('.known-stone a'));
  await page.getByText('2 checks, the last on').waitFor();
});
