import type { BundleErrorCode } from '../../src/bundle/bundleError';
import type { JournalRecord } from '../../src/journal/records';
import { type RawFile, rawZip } from './rawZip';

/** A bundle that somebody made to do harm, or that came to harm. */
export interface HostileCase {
  readonly what: string;
  /** One file or several that are alike. */
  readonly files: () => readonly Blob[];
  /** Why it is refused whole; null when it is taken in. */
  readonly refused: BundleErrorCode | null;
  /** Whether it takes seconds to make or read. */
  readonly isLarge?: boolean;
}

export const ID = '01ARZ3NDEKTSV4RRFFQ69G5FAV';
/** An id that ends in a number, and is later than all with a smaller one. */
export const idOf = (number: number) => `01J${String(number).padStart(23, '0')}`;
export const KEY = 'ab'.repeat(32);
export const JPEG = Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 1, 2, 3);

export const batch = {
  ...{ kind: 'batch', id: ID, name: 'river finds', machine: null, startedOn: '2026-03-02' },
  ...{ materials: [], source: '', isOver: false },
} as const satisfies JournalRecord;

export const journalOf = (records: readonly unknown[], version: unknown = 3): string =>
  JSON.stringify({ format: 'glintgrade journal', version, records });

/** `journal.json` with records that are given as JSON. */
export const journalSaying = (...records: readonly string[]): string =>
  `{"format":"glintgrade journal","version":3,"records":[${records.join(',')}]}`;

export const journalFile = (content: string = journalOf([batch])): RawFile => ({
  name: 'journal.json',
  content,
});

/** A zip with a good journal, and with further files. */
export const withFiles = (...files: readonly RawFile[]): Blob => rawZip([journalFile(), ...files]);

/** A zip with nothing but a journal.json. */
export const withJournal = (content: string): Blob => rawZip([journalFile(content)]);

/** A case of files that are alike. */
export const hostile = (
  what: string,
  code: HostileCase['refused'],
  ...files: readonly (() => Blob | readonly Blob[])[]
): HostileCase => ({ what, refused: code, files: () => files.flatMap((file) => file()) });

/** As `hostile`, of files that take seconds to make or read. */
export const large = (...parts: Parameters<typeof hostile>): HostileCase => ({
  ...hostile(...parts),
  isLarge: true,
});

/** Zips of a journal.json that says just this. */
export const saying = (...contents: readonly string[]) =>
  contents.map((content) => () => withJournal(content));

/** Zips of a journal of this one record. */
export const holding = (...records: readonly unknown[]) =>
  records.map((record) => () => withJournal(journalOf([record])));

/** A record with a field's JSON put in by hand. */
export const withField = (name: string, json: string, record: object = batch) =>
  JSON.stringify(Object.fromEntries([...Object.entries(record), [name, 0]])).replace(
    `"${name}":0`,
    () => `"${name}":${json}`,
  );
