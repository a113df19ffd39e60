import { spawn } from 'node:child_process';
import { mkdir, readdir, readFile, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { expect, it } from 'vitest';
import { runGrade } from '../helpers/runGrade';
import { temporaryFolder } from '../helpers/temporaryFolder';

const folder = await temporaryFolder();
const photos = join(folder.path, 'photos');
await mkdir(photos);
const NAMES = ['a.jpg', 'b.jpg', 'c.jpg'];
for (const [i, name] of NAMES.entries())
  await sharp('sample-images/close-up.jpg')
    .resize(620 + 4 * i)
    .jpeg({ quality: 92 })
    .toFile(join(photos, name));
await folder.save('photos/empty.jpg', '');
await folder.save('photos/notes.txt', 'no photo');
const repository = fileURLToPath(new URL('../..', import.meta.url));
const at = (name: string) => join(folder.path, name);
const entriesIn = async (path: string) => JSON.parse(await readFile(path, 'utf8')).photos;

it('gives the same entries and pictures with several processes as with none', {
  timeout: 400_000,
}, async () => {
  const alone = await runGrade(photos, '--json', at('alone.json'), '--picture', at('alone'));
  const pool = await runGrade(photos, '--jobs', '2', '--json', at('pool.json'), '--picture', at('pool'));
  expect([alone.code, pool.code, pool.stderr]).toEqual([3, 3, '']);
  expect(await entriesIn(at('pool.json'))).toEqual(await entriesIn(at('alone.json')));
  expect((await readdir(at('pool'))).sort()).toEqual(['a-sorted.png', 'b-sorted.png', 'c-sorted.png']);
  expect(await readFile(join(at('pool'), 'a-sorted.png'))).toEqual(
    await readFile(join(at('alone'), 'a-sorted.png')),
  );
  expect(pool.stdout).toContain('a.jpg: 2 stones');
  expect(pool.stdout).toMatch(
    /4 photos in [\d.]+ s, [\d.]+ photos\/s, 2 at a time, each with \d+ MB at most\./,
  );
});

it('goes on where it was killed: what was done is not done again', { timeout: 400_000 }, async () => {
  const words = [photos, '--jobs', '1', '--json', at('killed.json')];
  const child = spawn(process.execPath, ['.config/run.mjs', 'src/cli/grade.ts', ...words], {
    cwd: repository,
  });
  await new Promise<void>((resolve) =>
    child.stdout.on('data', (text) => /: 2 stones/.test(text) && resolve()),
  );
  child.kill('SIGKILL');
  expect((await stat(at('killed.json.part'))).size).toBeGreaterThan(1000);
  const again = await runGrade(...words);
  expect(again.stdout).toMatch(/^[1-3] of 4 were done before\.\n/);
  expect(again.stdout).not.toContain('a.jpg: 2 stones');
  expect(again.code).toBe(3);
  expect(await entriesIn(at('killed.json'))).toEqual(await entriesIn(at('alone.json')));
});
