import { appendFile, readFile, stat, truncate, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { DoneFile } from '../../src/cli/doneFile';
import { temporaryFolder } from '../helpers/temporaryFolder';

const folder = await temporaryFolder();
const SETTINGS = { step: 'coarse' };
let number = 0;

/** A file to be written, and photos that are none, since only their names, sizes and times count here. */
async function begun() {
  const json = join(folder.path, `result ${++number}.json`);
  const photos = await Promise.all(
    ['a.jpg', 'ö,"entry":.jpg', 'c.jpg'].map((name) => folder.save(`${number} ${name}`, name)),
  );
  return { json, part: `${json}.part`, photos };
}
const entryOf = (path: string) => JSON.stringify({ file: path, note: 'größer, "quoted", {"entry":1}' });
const written = async (json: string) => JSON.parse(await readFile(json, 'utf8'));

it('goes on where it was stopped, and writes all in the order asked for', async () => {
  const { json, photos, part } = await begun();
  const [a, b, c] = photos as [string, string, string];
  const first = await DoneFile.open(json, SETTINGS);
  await first.add(c, entryOf(c), false);
  await first.add(b, entryOf(b), true);
  const second = await DoneFile.open(json, SETTINGS);
  expect(photos.map((path) => second.has(path))).toEqual([false, true, true]);
  expect(second.isAnyRefused).toBe(true);
  await second.add(a, entryOf(a), false);
  await second.finish(photos, true);
  expect(await written(json)).toEqual({ schema: 1, photos: photos.map((path) => JSON.parse(entryOf(path))) });
  await expect(stat(part)).rejects.toThrow();
});

it('drops a last line that was cut short, anywhere, and loses none before it', async () => {
  const { json, photos, part } = await begun();
  const [a, b, c] = photos as [string, string, string];
  const first = await DoneFile.open(json, SETTINGS);
  await first.add(a, entryOf(a), false);
  const whole = (await stat(part)).size;
  await first.add(b, entryOf(b), false);
  const end = (await stat(part)).size;
  const text = await readFile(part);
  for (const size of [whole, whole + 1, whole + 40, end - 2, end - 1, end]) {
    await writeFile(part, text);
    await truncate(part, size);
    const again = await DoneFile.open(json, SETTINGS);
    expect([size, again.has(a), again.has(b)]).toEqual([size, true, size >= end - 1]);
    await again.add(c, entryOf(c), false);
    await again.finish([a, b, c], false);
    const { photos: entries } = await written(json);
    expect(entries.map(({ file }: { file: string }) => file)).toEqual(size >= end - 1 ? [a, b, c] : [a, c]);
  }
});

it('takes nothing over from other settings, of a photo that changed, or out of a file of another kind', async () => {
  const { json, photos, part } = await begun();
  const [a, b] = photos as [string, string, string];
  const first = await DoneFile.open(json, SETTINGS);
  await first.add(a, entryOf(a), false);
  await first.add(b, entryOf(b), false);
  await utimes(a, new Date(2026, 1, 1), new Date(2026, 1, 1));
  const changed = await DoneFile.open(json, SETTINGS);
  expect([changed.has(a), changed.has(b)]).toEqual([false, true]);
  const other = await DoneFile.open(json, { step: 'polish' });
  expect([other.has(a), other.has(b)]).toEqual([false, false]);
  await writeFile(part, 'Dear stones, please shine.\n');
  expect((await DoneFile.open(json, SETTINGS)).has(a)).toBe(false);
  await appendFile(part, 'no JSON at all\n');
  expect((await DoneFile.open(json, SETTINGS)).has(a)).toBe(false);
});

it('says where it cannot write', async () => {
  const opening = DoneFile.open(join(folder.path, 'no such folder', 'x.json'), SETTINGS);
  await expect(opening).rejects.toThrow('Cannot write "');
});
