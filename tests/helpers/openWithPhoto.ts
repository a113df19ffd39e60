import type { Page } from 'playwright';
import type { WatchedPage } from './openPage';
import { openServedApp } from './servedApp';

/** Opens the served page on a phone, stops the sample, and measures a photo, given by its path or its bytes. */
export async function openWithPhoto(
  photo: Parameters<ReturnType<Page['getByLabel']>['setInputFiles']>[0],
): Promise<WatchedPage> {
  const watched = await openServedApp({ viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' });
  const { page } = watched;
  await page.getByRole('button', { name: 'Cancel' }).click();
  await page.getByText('Stopped: this photo was not measured.').waitFor();
  await page.getByLabel('Photo files').setInputFiles(photo);
  await page.locator('.sorting-picture svg').waitFor({ timeout: 280_000 });
  return watched;
}
