/**
 * Photographs every screen of the app at phone and desktop width, light and dark, into a folder:
 * `npm run screens -- FOLDER`. The journal is the example year's. Look at them after every change of a screen.
 */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { openPage } from '../helpers/openPage';
import { SCREENS } from '../helpers/screens';
import { serveBuilt } from '../helpers/serveBuilt';

const SIZES = [
  { name: 'phone', width: 390, height: 844 },
  { name: 'desktop', width: 1440, height: 900 },
] as const;

const [folder] = process.argv.slice(2);
if (!folder) {
  console.error('Name the folder to write them to: npm run screens -- FOLDER');
  process.exit(2);
}
await mkdir(folder, { recursive: true });
const served = await serveBuilt('src');
for (const { name: size, ...viewport } of SIZES) {
  const watched = await openPage(`${served.url}?example#/`, { viewport, reducedMotion: 'reduce' });
  const { page } = watched;
  await page.getByRole('button', { name: 'Understood' }).click();
  for (const { name, reach } of SCREENS) {
    await reach(page);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await page.waitForTimeout(600);
      const picture = await page.screenshot();
      await writeFile(
        join(folder, `${name}-${size}-${colorScheme}.webp`),
        await sharp(picture).webp({ quality: 82 }).toBuffer(),
      );
    }
  }
  if (watched.errors.length > 0) throw new Error(watched.errors.join('\n'));
  await watched.close();
  console.log(`${size}: ${SCREENS.length} screens, light and dark`);
}
await served.close();
