import { mkdir, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { placedPhoto, tracesIn } from '../helpers/placedPhoto';
import { runGrade } from '../helpers/runGrade';
import { temporaryFolder } from '../helpers/temporaryFolder';

const folder = await temporaryFolder();
const photo = await placedPhoto('sample-images/close-up.jpg', 900);

it('sees a photo’s place, camera and owner where they are, in EXIF and XMP, in a PNG and inside a ZIP', async () => {
  const told = ['Invented Cameras', 'Invented Owner', 'Invented Meadow', 'place 48.5, 9.25'];
  expect(await tracesIn(photo)).toEqual([...told.slice(0, 3), 'marker e1', 'marker e1', told[3]]);
  const png = await sharp(photo).keepMetadata().png().toBuffer();
  expect(await tracesIn(png)).toEqual(expect.arrayContaining(['eXIf', told[3]]));
});

it('writes nothing of where, by whom and with what a photo was taken: pictures, JSON, rig and bundle', async () => {
  await mkdir(join(folder.path, 'out'));
  await folder.save('tray.jpg', photo);
  const out = (name: string) => join(folder.path, 'out', name);
  const json = ['--json', out('result.json'), '--picture', out('')];
  const words = [...json, '--save-rig', out('rig.json'), '--bundle', out('bundle.zip')];
  const { code, stdout, stderr } = await runGrade(join(folder.path, 'tray.jpg'), ...words);
  expect([code, stderr]).toEqual([0, '']);
  const files = (await readdir(out(''))).sort();
  expect(files).toEqual(['bundle.zip', 'result.json', 'rig.json', 'tray-sorted.png']);
  for (const file of files) expect(await tracesIn(await readFile(out(file))), file).toEqual([]);
  expect(await tracesIn(Buffer.from(stdout))).toEqual([]);
  // Only the command's JSON names the photo, as it was named to it; what is handed on does not.
  const { 'journal.json': journal } = unzipSync(await readFile(out('bundle.zip')));
  expect(Buffer.from(journal!).includes('tray.jpg')).toBe(false);
  expect((await readFile(out('rig.json'))).includes('tray.jpg')).toBe(false);
});
