import { Validator } from '@cfworker/json-schema';
import fc from 'fast-check';
import { unzipSync } from 'fflate';
import { expect, it } from 'vitest';
import schema from '../../src/bundle/journal.schema.json';
import { recordsIn } from '../../src/bundle/readRecords';
import { writeBundle } from '../../src/bundle/writeBundle';
import { aJournal, aRecord } from '../helpers/arbitraryJournal';

// @cfworker/json-schema reads the published schema by itself, as a stranger's program would: draft 2020-12.
const validator = new Validator(schema as never, '2020-12');
const journalOf = (records: readonly unknown[]) => ({ format: 'glintgrade journal', version: 3, records });

it('holds for the journal.json of every bundle', async () => {
  await fc.assert(
    fc.asyncProperty(aJournal, async (records) => {
      const zip = await writeBundle({ records, photos: [] });
      const files = unzipSync(new Uint8Array(await zip.arrayBuffer()));
      const journal = JSON.parse(new TextDecoder().decode(files['journal.json']));
      expect(validator.validate(journal)).toEqual({ valid: true, errors: [] });
    }),
  );
});

/** Puts a value in place of one field, at any depth. */
function altered(record: object, path: number, value: unknown): object {
  const places: [holder: Record<string, unknown>, key: string][] = [];
  const copy = structuredClone(record) as Record<string, unknown>;
  const walk = (holder: Record<string, unknown>) => {
    for (const key of Object.keys(holder)) {
      places.push([holder, key]);
      if (typeof holder[key] === 'object' && holder[key] !== null)
        walk(holder[key] as Record<string, unknown>);
    }
  };
  walk(copy);
  const [holder, key] = places[path % places.length]!;
  if (value === undefined && !Array.isArray(holder)) delete holder[key];
  else holder[key] = value ?? null;
  return copy;
}

it('refuses what the program refuses, and takes what it takes, one field altered', () => {
  const aValue = fc.constantFrom(
    undefined,
    null,
    0,
    -1,
    1.5,
    1e9,
    '',
    'x',
    '2026-02-29',
    '2028-02-29',
    true,
    [],
    {},
    [1, 2],
  );
  fc.assert(
    fc.property(aRecord, fc.nat(), aValue, (record, path, value) => {
      const other = altered(record, path, value);
      const isTaken = (() => {
        try {
          recordsIn([other]);
          return true;
        } catch {
          return false;
        }
      })();
      expect(validator.validate(journalOf([other])).valid).toBe(isTaken);
    }),
    { numRuns: 1000 },
  );
});
