import { mkdir, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { photoFile } from '../helpers/photoFile';
import { runGrade } from '../helpers/runGrade';
import { temporaryFolder } from '../helpers/temporaryFolder';

const folder = await temporaryFolder();

it('prints help and ends with 0', async () => {
  const { code, stdout } = await runGrade('--help');
  expect(code).toBe(0);
  expect(stdout).toContain('--save-rig FILE');
});

it('ends with 2 and one sentence when it is misused', async () => {
  const misused = [
    { words: [], says: 'Name at least one photo; --help lists the options.\n' },
    { words: ['no-such-file.jpg'], says: 'There is no file "no-such-file.jpg".\n' },
    { words: ['tests'], says: 'There is no JPEG, PNG, WebP, AVIF or HEIC file in "tests".\n' },
  ];
  for (const { words, says } of misused) {
    expect(await runGrade(...words)).toEqual({ code: 2, stdout: '', stderr: says });
  }
});

it('ends with 3 and names the reason when photos are refused, and writes only JSON to the standard output', async () => {
  const whole = await photoFile('jpeg');
  const files = {
    'empty-file': await folder.save('empty.jpg', ''),
    'not-an-image': await folder.save('letter.jpg', 'Dear stones, please shine.'),
    truncated: await folder.save('half.jpg', whole.subarray(0, whole.length / 2)),
    'too-small': await folder.save('dot.png', await photoFile('png', { width: 1, height: 1 })),
  };
  const { code, stdout, stderr } = await runGrade(...Object.values(files), '--json', '-');
  const { schema, photos } = JSON.parse(stdout);
  expect([code, schema]).toEqual([3, 1]);
  expect(photos.map((photo: { refused: { code: string } }) => photo.refused.code)).toEqual(
    Object.keys(files),
  );
  expect(photos.map((photo: { file: string }) => photo.file)).toEqual(Object.values(files));
  expect(stderr.split('\n')[0]).toMatch(/empty\.jpg: refused \(empty-file\)\. The file is empty/);
});

it('writes no picture of a refused photo, and the JSON to a file', async () => {
  const pictures = join(folder.path, 'pictures');
  const json = join(folder.path, 'result.json');
  const words = [await folder.save('empty.jpg', ''), '--picture', pictures, '--json', json];
  const { code, stdout } = await runGrade(...words);
  expect(code).toBe(3);
  expect(stdout).toContain('refused (empty-file)');
  expect(await readdir(pictures)).toEqual([]);
  expect(JSON.parse(await readFile(json, 'utf8')).photos).toHaveLength(1);
});

it('says in one sentence where it cannot write', async () => {
  const taken = join(folder.path, 'taken');
  await mkdir(taken);
  const words = [await folder.save('empty.jpg', ''), '--json', taken];
  expect(await runGrade(...words)).toMatchObject({ code: 2, stderr: `Cannot write "${taken}".\n` });
});
