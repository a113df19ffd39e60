import ICAL from 'ical.js';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { BundleError } from '../../src/bundle/bundleError';
import { readBundle } from '../../src/bundle/readBundle';
import { mergeRecords } from '../../src/journal/mergeRecords';
import { german } from '../../src/texts/german/german';
import { speak, speech } from '../../src/texts/speech';
import { everythingSaid, type Said } from '../helpers/everythingSaid';
import { WHOLE } from '../helpers/hostileBatch';
import { HOSTILE_CASES } from '../helpers/hostileCases';
import { readCsv } from '../helpers/readCsv';

/** Longest that one file may take, and most that all of this may add to the memory of the process. */
const [MOST_MS, MOST_ADDED_MIB] = [60_000, 2048];
const memoryMib = () => process.resourceUsage().maxRSS / 1024;
const english = speech();
const spoken = { german: { language: 'de', texts: german }, english } as const;

let memoryBefore = 0;
beforeAll(() => {
  memoryBefore = memoryMib();
});
afterAll(() => speak(english));

/** Everything that every object inherits. */
const inherited = () =>
  [Object.prototype, Array.prototype, Function.prototype, String.prototype].map((one) =>
    Object.entries(Object.getOwnPropertyDescriptors(one)),
  );

it('has eighty cases and more, each of its own name', () => {
  expect(new Set(HOSTILE_CASES.map(({ what }) => what)).size).toBe(HOSTILE_CASES.length);
  expect(HOSTILE_CASES.length).toBeGreaterThanOrEqual(80);
});

const named = HOSTILE_CASES.map((one) => [one.what, one.refused ?? 'taken in', one] as const);
it.each(named)('%s: %s', async (_, __, { files, refused }) => {
  const before = inherited();
  for (const file of files()) {
    const began = performance.now();
    const outcome = await readBundle(file).catch((error: BundleError) => error);
    expect(performance.now() - began).toBeLessThan(MOST_MS);
    if (outcome instanceof Error) expectRefused(outcome, refused);
    else {
      expect(refused).toBeNull();
      const types = outcome.photos.flatMap(({ photo, thumbnail }) => [photo.type, thumbnail.type]);
      expect(types.filter((type) => type !== 'image/jpeg')).toEqual([]);
      const merged = new Map(mergeRecords(WHOLE, outcome.records).map((record) => [record.id, record]));
      expect([...WHOLE, ...outcome.records].filter(({ id }) => !merged.has(id))).toEqual([]);
      await expectPlain(everythingSaid(outcome.records));
    }
  }
  expect(inherited()).toEqual(before);
  expect(({} as { isOver?: unknown }).isOver).toBeUndefined();
  expect(memoryMib() - memoryBefore).toBeLessThan(MOST_ADDED_MIB);
});

/** With the code, and in both languages with a sentence of its own that shows nothing that cannot be seen. */
function expectRefused(error: BundleError, code: string | null): void {
  const stack = code === error.code ? '' : error.stack;
  expect({ name: error.name, code: error.code, stack }).toEqual({ name: 'BundleError', code, stack: '' });
  const sentences = Object.values(spoken).map((said) => {
    speak(said);
    return error.message;
  });
  expect(new Set(sentences).size).toBe(2);
  for (const sentence of sentences) {
    expect(sentence).toMatch(/^\p{Lu}.{20,}[.…]$/u);
    expect(sentence).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}]/u);
    expect(sentence.length).toBeLessThan(600);
  }
}

/** Elements that the program draws with; none of them runs or loads anything. */
const DRAWN = /^(svg|defs|filter|feGaussianBlur|g|rect|path|ellipse|circle|text|tspan|clipPath|line|title)$/;

async function expectPlain({ drawings, table, calendar }: Said): Promise<void> {
  for (const svg of drawings) {
    await sharp(Buffer.from(svg)).metadata();
    const tags = [...svg.matchAll(/<\/?([^\s/>]+)([^<>]*)>/g)];
    expect(tags.filter(([, name = '']) => !DRAWN.test(name))).toEqual([]);
    expect(tags.filter(([, , attributes = '']) => /\s(on\w+|(xlink:)?href)\s*=/i.test(attributes))).toEqual(
      [],
    );
    expect(svg.split('<').length - 1).toBe(tags.length);
  }
  const [names = [], ...rows] = readCsv(table.slice(1));
  for (const row of rows) {
    expect(row).toHaveLength(names.length);
    const formulas = row.filter((cell) => /^[\p{Z}\p{C}]*[=+\-@＝＋－＠]|^[\t\r\n]/u.test(cell));
    expect(formulas.filter((cell) => !Number.isFinite(Number(cell)))).toEqual([]);
    expect(row.filter((cell) => /^-?(NaN|Infinity)$/.test(cell))).toEqual([]);
  }
  if (calendar !== null) expectCalendar(calendar);
}

function expectCalendar(calendar: string): void {
  const events = new ICAL.Component(ICAL.parse(calendar)).getAllSubcomponents('vevent');
  expect(calendar.match(/^BEGIN:VEVENT/gm)).toHaveLength(events.length);
  for (const event of events) {
    const { startDate, endDate } = new ICAL.Event(event);
    expect(endDate.subtractDate(startDate).toSeconds()).toBe(86_400);
    expect([...event.getAllProperties('attach'), ...event.getAllProperties('rrule')]).toEqual([]);
  }
}
