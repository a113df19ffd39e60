import fc from 'fast-check';
import { expect, it } from 'vitest';
import { BundleError } from '../../src/bundle/bundleError';
import { readBundle } from '../../src/bundle/readBundle';
import { type BundleContents, writeBundle } from '../../src/bundle/writeBundle';
import { mergeRecords } from '../../src/journal/mergeRecords';
import { aJournal, aPhoto } from '../helpers/arbitraryJournal';

const someContents: fc.Arbitrary<BundleContents> = fc.record({
  records: aJournal,
  photos: fc.uniqueArray(aPhoto, { maxLength: 3, selector: ({ key }) => key }),
});

const bytesOf = async (blob: Blob) => new Uint8Array(await blob.arrayBuffer());
const photoBytes = ({ photos }: BundleContents) =>
  Promise.all(
    [...photos]
      .sort((a, b) => (a.key < b.key ? -1 : 1))
      .map(async ({ key, photo, thumbnail }) => [key, await bytesOf(photo), await bytesOf(thumbnail)]),
  );
const through = async (contents: BundleContents) => readBundle(await writeBundle(contents));

it('gives back the journal it was given, to the byte', async () => {
  await fc.assert(
    fc.asyncProperty(someContents, async (contents) => {
      const back = await through(contents);
      expect(back.records).toEqual(contents.records);
      expect(await photoBytes(back)).toEqual(await photoBytes(contents));
      expect(
        back.photos.every(
          ({ photo, thumbnail }) => photo.type === 'image/jpeg' && photo.type === thumbnail.type,
        ),
      ).toBe(true);
    }),
  );
});

it('gives the same bytes for the same journal, in whatever order it comes', async () => {
  await fc.assert(
    fc.asyncProperty(someContents, async ({ records, photos }) => {
      const turned = records.map(
        (record) => Object.fromEntries(Object.entries(record).reverse()) as unknown as typeof record,
      );
      const other = { records: turned.reverse(), photos: [...photos].reverse() };
      expect(await bytesOf(await writeBundle(other))).toEqual(
        await bytesOf(await writeBundle({ records, photos })),
      );
    }),
  );
});

// Laws of a union: Shapiro et al. 2011, "Conflict-free replicated data types" (join of a semilattice).
it('imports twice as once, and two bundles in either order alike', async () => {
  await fc.assert(
    fc.asyncProperty(aJournal, aJournal, aJournal, async (own, one, other) => {
      const [first, second] = [
        await through({ records: one, photos: [] }),
        await through({ records: other, photos: [] }),
      ];
      const once = mergeRecords(own, first.records);
      expect(mergeRecords(once, first.records)).toEqual(once);
      expect(mergeRecords(once, second.records)).toEqual(
        mergeRecords(mergeRecords(own, second.records), first.records),
      );
      expect(await through({ records: once, photos: [] })).toEqual({ records: once, photos: [] });
    }),
  );
});

const refusalOf = (file: Blob) =>
  readBundle(file).then(
    () => null,
    (error: unknown) => error,
  );

it('throws nothing but its own error, whatever the bytes', async () => {
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
      expect(await refusalOf(new Blob([bytes as Uint8Array<ArrayBuffer>]))).toBeInstanceOf(BundleError);
    }),
    { numRuns: 1000 },
  );
});

it('throws nothing but its own error for a bundle with some bytes altered, cut out or put in', async () => {
  const change = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    cut: fc.nat(8),
    put: fc.uint8Array({ maxLength: 8 }),
  });
  await fc.assert(
    fc.asyncProperty(
      someContents,
      fc.array(change, { minLength: 1, maxLength: 3 }),
      async (contents, changes) => {
        const bytes = [...(await bytesOf(await writeBundle(contents)))];
        for (const { at, cut, put } of changes) bytes.splice(Math.floor(at * bytes.length), cut, ...put);
        const refusal = await refusalOf(new Blob([Uint8Array.from(bytes)]));
        expect(refusal === null || refusal instanceof BundleError).toBe(true);
      },
    ),
    { numRuns: 500 },
  );
});
