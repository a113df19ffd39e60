import type { Page } from 'playwright';

/** A screen of the app and how to get there from the one before it, whatever language is spoken. */
export interface Screen {
  readonly name: string;
  readonly reach: (page: Page) => Promise<unknown>;
}

/** Goes to a place of the app and waits until something of it is there. */
async function goTo(page: Page, place: string, selector: string): Promise<void> {
  await page.evaluate((hash) => {
    location.hash = hash;
  }, `/${place}`);
  await page.locator(selector).first().waitFor({ timeout: 200_000 });
}

const inDialog = async (page: Page, button: number) => {
  await page.locator('.masthead > button').nth(button).click();
  await page.getByRole('dialog').waitFor();
};

const closed = async (page: Page) => {
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
};

/** Every screen, in an order in which each is reached from the one before; the journal is the example year's. */
export const SCREENS: readonly Screen[] = [
  { name: 'journal', reach: (page) => goTo(page, 'journal', '.batch') },
  {
    name: 'batch',
    reach: async (page) => {
      await page.locator('.batch').first().click();
      await page.locator('.stone-row').first().waitFor();
    },
  },
  {
    name: 'stone',
    reach: async (page) => {
      await page.locator('.stone-row-name a').first().click();
      await page.locator('.timeline-strip').first().waitFor();
    },
  },
  { name: 'compare', reach: (page) => goTo(page, 'compare', '.compare') },
  { name: 'plan', reach: (page) => goTo(page, 'plan', '.plan') },
  { name: 'start', reach: (page) => goTo(page, 'start', '.start') },
  { name: 'rig', reach: (page) => goTo(page, 'rig', '.guide') },
  { name: 'help', reach: (page) => goTo(page, 'help', '.help') },
  {
    name: 'tray',
    reach: async (page) => {
      await goTo(page, '', '.sorting-picture svg');
      await page.locator('.token').first().waitFor();
    },
  },
  {
    name: 'stone-detail',
    reach: async (page) => {
      await page.locator('.token').first().click();
      await page.locator('.detail').waitFor();
    },
  },
  {
    name: 'safety',
    reach: async (page) => {
      await page.locator('.detail header button').last().click();
      await inDialog(page, 0);
    },
  },
  {
    name: 'setup',
    reach: async (page) => {
      await closed(page);
      await inDialog(page, 1);
    },
  },
];
