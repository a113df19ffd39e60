import fc from 'fast-check';
import { expect, it } from 'vitest';
import { decodeFile } from '../../src/cli/decodeFile';
import { checkPhotoFile } from '../../src/image/checkPhotoFile';
import { REFUSALS, Refusal } from '../../src/image/notice';
import { photoFormat } from '../../src/image/photoFormat';
import { readExposure } from '../../src/image/readExposure';
import { readFocalLength } from '../../src/image/readFocalLength';
import { readHeifColors } from '../../src/image/readHeifColors';
import { readJpegQuality } from '../../src/image/readJpegQuality';
import { webpOrientation, webpWithoutExif } from '../../src/image/webpTurn';
import { temporaryFolder } from '../helpers/temporaryFolder';
import { type Base, makeBases } from './bases';
import { caseOf } from './cases';
import { mutate } from './mutate';
import { seeded } from './seeded';

const SEED = 20260316;
/** The command looks at thousands: `npm run fuzz:images`. */
const MUTATIONS = 150;

const folder = await temporaryFolder();
const bases = await makeBases();

/** A refusal's code, or "taken"; anything else is an error that nobody foresaw. */
async function endOf(work: () => unknown): Promise<string> {
  try {
    await work();
    return 'taken';
  } catch (error) {
    if (error instanceof Refusal) return error.code;
    throw error;
  }
}

/** What is read of a file's head says a number that can be true, or none, or refuses the file. */
async function expectSoundHead(bytes: Uint8Array): Promise<void> {
  expect(['taken', ...REFUSALS]).toContain(await endOf(() => checkPhotoFile(bytes)));
  const [focal, exposure, quality] = [
    await readFocalLength(bytes),
    await readExposure(bytes),
    readJpegQuality(bytes),
  ];
  if (focal !== null) expect(focal >= 8 && focal <= 2000).toBe(true);
  if (exposure !== null) expect(exposure > 0 && Number.isFinite(exposure)).toBe(true);
  if (quality !== null) expect(quality >= 1 && quality <= 100).toBe(true);
  expect(['srgb', 'display-p3']).toContain(readHeifColors(bytes));
  expect([1, 2, 3, 4, 5, 6, 7, 8]).toContain(webpOrientation(bytes));
  expect(webpOrientation(webpWithoutExif(bytes))).toBe(1);
}

it('takes every base that mutations start from', async () => {
  for (const { kind, name, bytes } of bases) {
    expect([name, photoFormat(bytes)]).toEqual([name, kind]);
    expect(await endOf(async () => decodeFile(await folder.save('base', bytes)))).toBe('taken');
  }
});

it('makes the same file of the same number, and leaves the bases alone', () => {
  const before = bases.map(({ bytes }) => Buffer.from(bytes).toString('base64'));
  const bytesOf = () =>
    Array.from({ length: 60 }, (_, k) => Buffer.from(caseOf(k, SEED, bases).bytes).toString('base64'));
  const once = bytesOf();
  expect(bytesOf()).toEqual(once);
  expect(new Set(once).size).toBeGreaterThan(50);
  expect(bases.map(({ bytes }) => Buffer.from(bytes).toString('base64'))).toEqual(before);
});

it(`decodes or refuses ${MUTATIONS} mutated files by a code`, async () => {
  const ends = new Map<string, number>();
  for (let number = 0; number < MUTATIONS; number++) {
    const { bytes } = caseOf(number, SEED, bases);
    await expectSoundHead(bytes);
    const end = await endOf(async () => decodeFile(await folder.save('photo', bytes)));
    ends.set(end, (ends.get(end) ?? 0) + 1);
  }
  // Mutations are neither all harmless nor all deadly.
  expect(ends.get('taken')).toBeGreaterThan(MUTATIONS / 10);
  expect(ends.get('not-an-image')).toBeGreaterThan(MUTATIONS / 10);
  expect(ends.get('truncated')).toBeGreaterThan(0);
});

it('reads the head of whatever bytes there are', async () => {
  const signatures = ['', 'ffd8ffe1', '89504e470d0a1a0a', '52494646ffffffff57454250', '0000001866747970'];
  const starts = signatures.map((hex) => new Uint8Array(Buffer.from(hex, 'hex')));
  const start = fc.constantFrom(...starts, ...bases.map(({ bytes }) => bytes.slice(0, 40)));
  await fc.assert(
    fc.asyncProperty(start, fc.uint8Array({ maxLength: 2000 }), async (head, rest) => {
      await expectSoundHead(new Uint8Array(Buffer.concat([head, rest])));
    }),
    { numRuns: 400, seed: SEED },
  );
});

it('reads the head of any mutation of any base', async () => {
  const base: fc.Arbitrary<Base> = fc.constantFrom(...bases);
  await fc.assert(
    fc.asyncProperty(base, fc.nat(), async (one, number) => {
      await expectSoundHead(mutate(one, bases, seeded(SEED, number)).bytes);
    }),
    { numRuns: 400, seed: SEED },
  );
});
