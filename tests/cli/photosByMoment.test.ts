import { mkdir, utimes } from 'node:fs/promises';
import { basename, join } from 'node:path';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { photosByMoment } from '../../src/cli/photosByMoment';
import { temporaryFolder } from '../helpers/temporaryFolder';

const folder = await temporaryFolder();
await mkdir(join(folder.path, 'tray.jpg'));

/** A small photo; without a moment it says nothing of when it was taken. */
async function save(name: string, format: 'jpeg' | 'webp', moment: string | null): Promise<string> {
  const plain = sharp({ create: { width: 8, height: 8, channels: 3, background: 'gray' } });
  const dated = moment === null ? plain : plain.withExif({ IFD2: { DateTimeOriginal: moment } });
  return folder.save(name, await dated.toFormat(format).toBuffer());
}

it('puts photos in the order they were taken, by the camera, else by the file, else by name', async () => {
  await save('tray.jpg/z.jpg', 'jpeg', '2026:03:02 10:00:00');
  await save('tray.jpg/b.jpeg', 'jpeg', '2026:03:09 10:00:00');
  await save('tray.jpg/a.JPG', 'jpeg', '2026:03:09 10:00:00');
  const undated = await save('tray.jpg/plain.webp', 'webp', null);
  // Written in the zone of this computer, so that the day is that of its calendar.
  await utimes(undated, new Date(2026, 2, 5, 23, 59), new Date(2026, 2, 5, 23, 59));
  await folder.save('tray.jpg/notes.txt', 'no photo');
  const last = await save('last.jpg', 'jpeg', '2026:03:10 00:00:00');
  const photos = await photosByMoment([last, join(folder.path, 'tray.jpg')]);
  expect(photos.map(({ path, moment }) => `${moment} ${basename(path)}`)).toEqual([
    '2026-03-02T10:00:00 z.jpg',
    '2026-03-05T23:59:00 plain.webp',
    '2026-03-09T10:00:00 a.JPG',
    '2026-03-09T10:00:00 b.jpeg',
    '2026-03-10T00:00:00 last.jpg',
  ]);
});
