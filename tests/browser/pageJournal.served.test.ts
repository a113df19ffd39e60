import type { Page } from 'playwright';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { WatchedPage } from '../helpers/openPage';
import { openWithPhoto } from '../helpers/openWithPhoto';

const TRAY = 'sample-images/close-up.jpg';

let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  watched = await openWithPhoto(TRAY);
  page = watched.page;
  await setDay(2);
}, 300_000);

afterAll(() => watched.close());

/** The page's clock alone; timers go on. */
const setDay = (day: number) => page.clock.setFixedTime(new Date(2026, 2, day, 12));
const goTo = (place: 'Tray' | 'Journal') => page.getByRole('link', { name: place, exact: true }).click();
const kept = () => page.getByText('Kept in the journal under').waitFor();

it('has an empty journal at first, and says how to fill it', async () => {
  await goTo('Journal');
  await page.getByText('Nothing is kept yet.').waitFor();
  await goTo('Tray');
});

it('keeps a check under a new batch, with its photo and verdicts', async () => {
  await page.getByLabel('Its name').fill('Brook pebbles');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await kept();
  await goTo('Journal');
  const row = page.locator('.batch-row');
  await row.locator('.check-photo').waitFor();
  expect(await row.textContent()).toMatch(/Brook pebbles2 stones, 1 check, last 2026-03-02 after coarse/);
  const counted = await row.locator('.check-action strong').allInnerTexts();
  expect(counted.reduce((sum, text) => sum + Number(text), 0)).toBe(2);
});

it('lets the owner disagree with one tap, in the list too, and says what is next for the batch', async () => {
  await goTo('Tray');
  await page.locator('.token').first().click();
  await page.getByRole('button', { name: 'Set aside', exact: true }).click();
  await page.getByText('You decided so; the advice was').waitFor();
  expect(await page.locator('.group[data-action="set-aside"] .token').count()).toBeGreaterThan(0);
  await page.getByRole('heading', { name: 'What is next' }).waitFor();
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await goTo('Journal');
});

it('adds another side of the same day to that check, and a later photo as a check of its own', async () => {
  await goTo('Tray');
  expect(await page.getByLabel(/^Another side of the stones/).isChecked()).toBe(true);
  await page.getByRole('button', { name: 'Keep it once more' }).click();
  await page.getByRole('button', { name: 'Keeping…' }).waitFor({ state: 'detached' });
  await setDay(10);
  await goTo('Journal');
  await goTo('Tray');
  expect(await page.getByLabel(/^Another side of the stones/).count()).toBe(0);
  await page.getByRole('button', { name: 'Keep it once more' }).click();
  await page.getByRole('button', { name: 'Keeping…' }).waitFor({ state: 'detached' });
  await page.getByRole('link', { name: 'Brook pebbles' }).click();
  await page.locator('.stone-row').first().waitFor();
  expect(await page.locator('.checks > .check').allInnerTexts()).toEqual([
    expect.stringMatching(/^2026-03-10, after coarse, 2 stones\n/),
    expect.stringMatching(/^2026-03-02, after coarse, 2 stones, 2 sides\n/),
  ]);
});

it('knew the stones again: two stones, each with two checks', async () => {
  expect(await page.locator('.stone-row').count()).toBe(2);
  await page.getByRole('link', { name: 'Stone 1' }).click();
  await page.getByText('2 checks, the last on 2026-03-10').waitFor();
  await page.getByText('2 sides together').waitFor();
  expect(await page.locator('.timeline-strip').count()).toBeGreaterThanOrEqual(3);
});

it('draws the stone of every check, before and after, and lets a slider uncover the later one', async () => {
  const drawn = await page.locator('canvas.stone-picture').evaluateAll((all) =>
    all.map((canvas) => {
      const { width, height } = canvas as HTMLCanvasElement;
      const pixels = (canvas as HTMLCanvasElement).getContext('2d')!.getImageData(0, 0, width, height).data;
      return pixels.some((value, i) => i % 4 === 3 && value > 0);
    }),
  );
  expect(drawn).toHaveLength(5);
  expect(drawn.every(Boolean)).toBe(true);
  const slider = page.getByRole('slider');
  await slider.focus();
  await page.keyboard.press('Home');
  expect(await slider.getAttribute('aria-valuetext')).toBe('0 % of the later picture');
});

it('records a favorite, what the owner did, and what a stone is, and goes back by the back button', async () => {
  await page.getByRole('button', { name: 'Make it a favorite' }).click();
  await page.getByRole('button', { name: 'Favorite' }).and(page.locator('[aria-pressed="true"]')).waitFor();
  await page.getByLabel('You did').first().selectOption('set-aside');
  await page.getByText('About this stone').click();
  await page.getByLabel('Material').selectOption('jasper');
  await page.getByLabel('Where it came from').fill('the brook');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('jasper, the brook. 2 checks').waitFor();
  expect(await page.getByLabel('You did').first().inputValue()).toBe('set-aside');
  await page.goBack();
  await page.getByRole('heading', { name: 'Stones' }).waitFor();
});

it('lets two stones that were taken for each other change places with one tap', async () => {
  const dialog = page.getByRole('dialog');
  const choice = (place: number, stone: string) =>
    dialog
      .getByRole('radiogroup', { name: `Stone ${place} of this photo is` })
      .getByRole('radio', { name: stone });
  await page.getByRole('button', { name: 'Which is which' }).first().click();
  expect(await choice(1, 'stone 1').getAttribute('aria-checked')).toBe('true');
  await choice(1, 'stone 2').click();
  expect(await choice(2, 'stone 1').getAttribute('aria-checked')).toBe('true');
  await dialog.getByRole('button', { name: 'All right: keep' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Which is which' }).first().click();
  expect(await choice(1, 'stone 2').getAttribute('aria-checked')).toBe('true');
  await dialog.getByRole('button', { name: 'Not now' }).click();
});

it('records machines and runs, and ends a run', async () => {
  await goTo('Journal');
  await page.getByRole('button', { name: 'Add a machine' }).click();
  await page.getByLabel('Name', { exact: true }).fill('the big barrel');
  await page.getByLabel(/^Holds, kg/).fill('5.4');
  await page.getByRole('button', { name: 'Add', exact: true }).click();
  await page.getByText('the big barrel, rotary, 5.4 kg').waitFor();
  await page.getByRole('link', { name: 'Brook pebbles' }).click();
  await page.getByRole('button', { name: 'Start a run' }).click();
  await page.getByLabel('Machine').first().selectOption('the big barrel');
  await page.getByRole('button', { name: 'Add the run' }).click();
  await page.getByText('Coarse 2026-03-10 to now, the big barrel').waitFor();
  await page.getByRole('button', { name: 'Washed out today' }).click();
  await page.getByText('Coarse 2026-03-10 to 2026-03-10, the big barrel').waitFor();
});

it('asks about stones that look like none it knows, and takes them for new ones when the owner agrees', async () => {
  const buffer = await sharp(TRAY).modulate({ hue: 120 }).jpeg({ quality: 95 }).toBuffer();
  await setDay(18);
  await goTo('Tray');
  await page.getByLabel('Photo files').setInputFiles({ name: 'other.jpg', mimeType: 'image/jpeg', buffer });
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.getByRole('heading', { name: 'Which stone is which?' }).waitFor();
  await page.getByRole('button', { name: 'All right: keep' }).click();
  await page.getByRole('link', { name: 'Brook pebbles' }).click();
  await page.locator('.stone-row').nth(3).waitFor();
});

it('still has all of it when the page is opened again at the same place', async () => {
  await page.reload();
  await page.getByText('Coarse 2026-03-10 to 2026-03-10, the big barrel').waitFor();
  expect(await page.locator('.stone-row').count()).toBe(4);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBe(390);
});

it('asked nothing of any other server and left the console clean', () => {
  expect(watched.foreignRequests).toEqual([]);
  expect(watched.errors).toEqual([]);
});
