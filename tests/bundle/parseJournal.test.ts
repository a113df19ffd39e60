import fc from 'fast-check';
import { expect, it } from 'vitest';
import { BundleError } from '../../src/bundle/bundleError';
import { parseJournal } from '../../src/bundle/parseJournal';
import { paceOf } from '../../src/progress/pace';

const HEAD = '{"format":"glintgrade journal","version":3,"records":[';
const parsed = (text: string) => parseJournal(new TextEncoder().encode(text), paceOf());

/** What a reader of the whole text makes of it; a text that is no JSON has no value. */
function whole(text: string): { readonly value?: unknown } {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return {};
  }
}

async function byParts(text: string): Promise<{ readonly value?: unknown }> {
  try {
    return { value: await parsed(text) };
  } catch (error) {
    expect(error).toBeInstanceOf(BundleError);
    return {};
  }
}

it('reads one record a line, none, and a text laid out in another way', async () => {
  expect(await parsed(`${HEAD}\n{"id":"a"},\n{"id":"b"}\n]}\n`)).toEqual({
    format: 'glintgrade journal',
    version: 3,
    records: [{ id: 'a' }, { id: 'b' }],
  });
  expect(await parsed(`${HEAD}\n]}\n`)).toEqual({ format: 'glintgrade journal', version: 3, records: [] });
  expect(await parsed('{ "records": [\n{ "id": "a" } ],\n"version": 1 }')).toEqual({
    version: 1,
    records: [{ id: 'a' }],
  });
});

// RFC 8259 is the law; JSON.parse is its reader.
it('takes and refuses just what JSON.parse does, however lines are swapped, left out or altered', async () => {
  const aLine = fc.constantFrom(
    ...[HEAD, '{"records":[],"records":[', '{"x":[{"records":[', '"records":[', '{"__proto__":1,"records":['],
    ...[
      '{"id":"a"},',
      '{"id":"b"}',
      '{"id":"ü"},',
      '1,',
      '2',
      '[],',
      ',',
      '',
      ' ',
      '{"id":',
      '"c"}',
      ']}',
      ']',
    ],
  );
  const someLines = fc.array(aLine, { maxLength: 6 });
  const someText = fc
    .tuple(fc.boolean(), someLines, fc.boolean(), fc.constantFrom('', '\n', '\n\n', ' '))
    .map(([isHeaded, lines, isEnded, last]) =>
      [...(isHeaded ? [HEAD] : []), ...lines, ...(isEnded ? [']}'] : [])].join('\n').concat(last),
    );
  await fc.assert(
    fc.asyncProperty(someText, async (text) => {
      expect(await byParts(text)).toEqual(whole(text));
    }),
    { numRuns: 3000 },
  );
});

it('reads letters and lines that lie across the pieces it takes', async () => {
  const records = Array.from({ length: 40 }, (_, i) => ({ id: `${i}`, name: 'ü€🪨'.repeat(900 + i) }));
  const text = `${HEAD}\n${records.map((record) => JSON.stringify(record)).join(',\n')}\n]}\n`;
  expect(await parsed(text)).toEqual(JSON.parse(text));
});

it('refuses what is not UTF-8', async () => {
  const bytes = Uint8Array.from([...new TextEncoder().encode(`${HEAD}\n"`), 0xff, 0x22, 0x0a, 0x5d, 0x7d]);
  await expect(parseJournal(bytes, paceOf())).rejects.toThrow(
    expect.objectContaining({ code: 'broken-json' }),
  );
});
