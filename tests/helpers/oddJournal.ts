import { readFile } from 'node:fs/promises';
import { readBundle } from '../../src/bundle/readBundle';
import { writeBundle } from '../../src/bundle/writeBundle';
import { recordId } from '../../src/journal/recordId';
import type { BatchRecord, JournalRecord, RunRecord } from '../../src/journal/records';

/** As long as a line of the journal may be, letters. */
const MOST = 200;

/** Names as people may well give them: right to left, without a space, as long as they may be, or all of these. */
export const ODD_NAMES = {
  rightToLeft: 'אבני הנחל (3)',
  endless: 'Pebbles'.padEnd(MOST, 'andmorepebbles'),
  long: 'Pebbles from behind the old mill '.repeat(7).slice(0, MOST).trimEnd(),
  rightToLeftEndless: 'حصى'.padEnd(MOST, 'الوادي'),
} as const;

const NAMES = Object.values(ODD_NAMES);

/**
 * The example year under odd names, and batches that turn in the machine today: every batch, stone, machine, source and
 * charge has one of them.
 *
 * @returns A bundle that the page takes in.
 */
export async function oddJournal(): Promise<Buffer> {
  const file = await readFile(new URL('../../sample-images/example-year.zip', import.meta.url));
  const { records, photos } = await readBundle(new Blob([new Uint8Array(file)]));
  const zip = await writeBundle({ records: renamed([...records, ...turning(records)]), photos });
  return Buffer.from(await zip.arrayBuffer());
}

/** Three batches without a check, charged in the first machine. */
function turning(records: readonly JournalRecord[]): JournalRecord[] {
  const machine = records.find(({ kind }) => kind === 'machine')?.id ?? null;
  return [1, 2, 3].flatMap((): [BatchRecord, RunRecord] => {
    const id = recordId();
    const about = { machine, startedOn: '2026-09-20' };
    return [
      { kind: 'batch', id, name: '', ...about, materials: [], source: '', isOver: false },
      { kind: 'run', id: recordId(), batch: id, ...about, step: 'coarse', endedOn: null, charge: '' },
    ];
  });
}

function renamed(records: readonly JournalRecord[]): JournalRecord[] {
  const things = new Map<string, string[]>();
  /** The same for a thing and its corrections; of things of one kind one name after the other. */
  const nameOf = ({ kind, id, corrects }: JournalRecord, shift = 0): string => {
    const known = things.get(kind) ?? [];
    things.set(kind, known);
    const thing = corrects ?? id;
    if (!known.includes(thing)) known.push(thing);
    return NAMES[(known.indexOf(thing) + shift) % NAMES.length] ?? '';
  };
  return records.map((record): JournalRecord => {
    const name = nameOf(record);
    if (record.kind === 'batch') return { ...record, name, source: nameOf(record, 1), isOver: false };
    if (record.kind === 'stone') return { ...record, name, source: nameOf(record, 1) };
    if (record.kind === 'machine') return { ...record, name };
    return record.kind === 'run' ? { ...record, charge: name } : record;
  });
}
