import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { readBundle } from '../../src/bundle/readBundle';
import { batchHistory } from '../../src/history/batchHistory';
import type { JournalRecord, RecordKind } from '../../src/journal/records';
import { runGrade } from '../helpers/runGrade';
import { temporaryFolder } from '../helpers/temporaryFolder';

/** Two stones, so that it is quickly measured. */
const SAMPLE = 'sample-images/close-up.jpg';
const folder = await temporaryFolder();

/** The sample tray as a camera would have written it then, with the place where it was taken. */
async function takenOn(moment: string): Promise<Buffer> {
  const place = {
    GPSLatitudeRef: 'N',
    GPSLatitude: '48/1 30/1 0/1',
    GPSLongitudeRef: 'E',
    GPSLongitude: '9/1 0/1 0/1',
  };
  const exif = { IFD0: { Make: 'Invented Cameras' }, IFD2: { DateTimeOriginal: moment }, IFD3: place };
  return sharp(SAMPLE).resize(900).withExif(exif).jpeg({ quality: 97 }).toBuffer();
}

const ofKind = <K extends RecordKind>(records: readonly JournalRecord[], kind: K) =>
  records.filter((record): record is Extract<JournalRecord, { kind: K }> => record.kind === kind);

async function bundleAt(path: string) {
  const { records, photos } = await readBundle(new Blob([new Uint8Array(await readFile(path))]));
  const [batch] = ofKind(records, 'batch');
  const [stones, checks, identities] = [
    ofKind(records, 'stone'),
    ofKind(records, 'check'),
    ofKind(records, 'identity'),
  ] as const;
  const history = batchHistory({
    batch: batch!,
    runs: [],
    stones,
    checks,
    identities,
    decisions: [],
    withdrawals: [],
  });
  return { history, photos };
}

it('writes a folder of photos as a batch: a check a photo by its day, its stones known again', async () => {
  await mkdir(join(folder.path, 'photos'));
  await folder.save('photos/a.jpg', await takenOn('2026:03:16 09:00:00'));
  await folder.save('photos/b.JPG', await takenOn('2026:03:09 23:59:59'));
  await folder.save('photos/letter.png', 'Dear stones, please shine.');
  await folder.save('photos/notes.txt', 'not a photo');
  const file = join(folder.path, 'bundle.zip');
  const words = ['--bundle', file, '--batch-name', 'river finds', '--step', 'polish', '--material', 'agate'];
  const { code, stdout, stderr } = await runGrade(join(folder.path, 'photos'), ...words);
  expect([code, stderr]).toEqual([3, '']);
  expect(stdout).toContain('letter.png: refused (not-an-image)');

  const { history, photos } = await bundleAt(file);
  expect(history.batch).toMatchObject({ name: 'river finds', startedOn: '2026-03-09', isOver: false });
  expect(history.checks.map(({ check }) => [check.day, check.step, check.material])).toEqual([
    ['2026-03-09', 'polish', 'agate'],
    ['2026-03-16', 'polish', 'agate'],
  ]);
  // The very same stones lie in both photos, in the same places; sample-images/close-up.json counts them.
  const truth = JSON.parse(await readFile('sample-images/close-up.json', 'utf8'));
  expect(history.stones).toHaveLength(truth.stones.length);
  for (const { stone, checks } of history.stones) {
    expect(checks.map(({ faces }) => `${faces[0].stone.place}`)).toEqual([stone.name, stone.name]);
  }
  expect(stdout).toContain(`${file}: 2 checks of ${truth.stones.length} stones.\n`);
  expect(photos.map(({ key }) => key).sort()).toEqual(history.checks.map(({ check }) => check.photo!).sort());
});

it('keeps photos small, and nothing of where they were taken', async () => {
  const { photos } = await bundleAt(join(folder.path, 'bundle.zip'));
  for (const [kind, longestPx] of [
    ['photo', 900],
    ['thumbnail', 320],
  ] as const) {
    const bytes = Buffer.from(await photos[0]![kind].arrayBuffer());
    const { format, width, height, exif } = await sharp(bytes).metadata();
    expect({ format, longest: Math.max(width, height), exif }).toEqual({
      format: 'jpeg',
      longest: longestPx,
      exif: undefined,
    });
    expect(bytes.includes('Invented Cameras')).toBe(false);
  }
  const original = await readFile(join(folder.path, 'photos/a.jpg'));
  expect(original.includes('Invented Cameras')).toBe(true);
});

it('says in one sentence why there is no bundle', async () => {
  const letter = await folder.save('letter.jpg', 'Dear stones, please shine.');
  const refused = await runGrade(letter, '--bundle', join(folder.path, 'none.zip'));
  expect(refused.code).toBe(3);
  expect(refused.stdout).toContain('No photo was graded, so no bundle was written.');
  const missing = await runGrade('no-such-folder', '--bundle', 'none.zip');
  expect(missing).toEqual({ code: 2, stdout: '', stderr: 'There is no file "no-such-folder".\n' });
  const empty = await runGrade('tests/golden', 'tests/cli', '--bundle', 'none.zip');
  expect(empty.stderr).toBe('There is no JPEG, PNG, WebP, AVIF or HEIC file in "tests/cli".\n');
});
