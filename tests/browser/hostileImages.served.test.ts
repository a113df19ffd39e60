import { afterAll, beforeAll, expect, it } from 'vitest';
import { decodeFile } from '../../src/cli/decodeFile';
import { makeBases } from '../fuzz/bases';
import { makeExtremes } from '../fuzz/extremes';
import { type Grader, openGrader } from '../fuzz/openGrader';
import { temporaryFolder } from '../helpers/temporaryFolder';

/** A busy machine takes its time; `npm run fuzz:images` looks at the ten seconds. */
const MOST_MS = 60_000;

const folder = await temporaryFolder();
const photo = (await makeBases()).find(({ kind, isTray }) => kind === 'png' && isTray)!.bytes;
const extremes = await makeExtremes(photo);
const named = (name: string) => extremes.find((one) => one.name === name)!;

let grader: Grader;
beforeAll(async () => {
  grader = await openGrader();
});
afterAll(async () => {
  await grader.close();
  expect(grader.errors).toEqual([]);
});

const decoded = async (bytes: Uint8Array) => decodeFile(await folder.save('photo', bytes));

it.each(extremes.filter(({ refused }) => refused))('refuses $name: $refused', async ({ bytes, refused }) => {
  expect(await grader.grade(bytes, MOST_MS)).toMatchObject({ kind: 'refused', said: refused });
  await expect(decoded(bytes)).rejects.toMatchObject({ code: refused });
});

it.each(extremes.filter(({ twin }) => twin))(
  'sees in $name the very picture, in page and command',
  async ({ bytes, twin }) => {
    const { bytes: other, levels } = twin!;
    const inPage = await grader.difference(bytes, other);
    expect(inPage).not.toBeNull();
    expect(inPage).toBeLessThanOrEqual(levels);
    const [one, two] = [await decoded(bytes), await decoded(other)];
    expect([one.widthPx, one.heightPx]).toEqual([two.widthPx, two.heightPx]);
    const inNode = one.rgba.reduce((most, level, i) => Math.max(most, Math.abs(level - two.rgba[i]!)), 0);
    expect(inNode).toBeLessThanOrEqual(levels);
  },
);

it.each([
  ['PNG of orientation 6', 'AVIF of orientation 5', 'lossless WebP'],
  ['lossless WebP with its lens', 'lossless AVIF with its lens'],
])('grades lossless copies and turned photos the same to the last digit: %s, …', async (...names) => {
  const { kind, said } = await grader.grade(named(names[0]!).twin!.bytes, MOST_MS);
  expect(kind).toBe('graded');
  expect(JSON.parse(said).stones).toHaveLength(1);
  for (const name of names) expect((await grader.grade(named(name).bytes, MOST_MS)).said, name).toBe(said);
});

it('grades CMYK', async () => {
  const { kind, said } = await grader.grade(named('CMYK').bytes, MOST_MS);
  expect(kind).toBe('graded');
  expect(JSON.parse(said).stones).toHaveLength(1);
});
