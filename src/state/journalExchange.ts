import { BundleError } from '../bundle/bundleError';
import { nextCheck } from '../bundle/nextCheck';
import type { Reminder } from '../bundle/reminderCalendar';
import { type BatchHistory, batchHistory } from '../history/batchHistory';
import { DifferingRecord } from '../journal/differingRecord';
import type { Journal, KeptPhoto } from '../journal/openJournal';
import type { MachineRecord, RecordId } from '../journal/records';
import { paceOf } from '../progress/pace';
import { partOf, tellerOf, type Watch } from '../progress/watch';

/** What a bundle brought. */
export interface TakenIn {
  readonly records: number;
  /** Records that were not there before. */
  readonly fresh: number;
  readonly photos: number;
}

/** Shares of the time after which records and photos are read, and after which a bundle is read and only adding is left. */
const [RECORDS_READ, PHOTOS_READ, BUNDLE_READ] = [0.15, 0.25, 0.65];

/**
 * The whole journal as one bundle: 500 checks take 4 s on a computer.
 *
 * @throws The reason for which it was called off, as all that follow do.
 */
export async function bundleOf(journal: Journal, watch: Watch = {}): Promise<Blob> {
  const { writeBundle } = await import('../bundle/writeBundle');
  const records = await journal.all(partOf(watch, 0, RECORDS_READ));
  const tell = tellerOf(partOf(watch, RECORDS_READ, PHOTOS_READ));
  const photos: KeptPhoto[] = [];
  const keys = await journal.photoKeys();
  for (const [i, key] of keys.entries()) {
    const photo = await journal.photo(key);
    if (photo) photos.push(photo);
    tell((i + 1) / keys.length);
  }
  return writeBundle({ records, photos }, partOf(watch, PHOTOS_READ, 1));
}

/**
 * Takes a bundle in: all of it or, when it is refused or called off, nothing. What is here already stays as it is. 500
 * checks take 4 s on a computer.
 *
 * @throws BundleError with a sentence that says why and what to do.
 */
export async function takeInBundle(journal: Journal, file: Blob, watch: Watch = {}): Promise<TakenIn> {
  const { readBundle } = await import('../bundle/readBundle');
  const { records, photos } = await readBundle(file, partOf(watch, 0, BUNDLE_READ));
  const known = new Set(await journal.recordIds());
  await addUnchanged(journal, records, photos, partOf(watch, BUNDLE_READ, 1));
  return {
    records: records.length,
    fresh: records.filter(({ id }) => !known.has(id)).length,
    photos: photos.length,
  };
}

async function addUnchanged(journal: Journal, ...added: Parameters<Journal['add']>): Promise<void> {
  try {
    await journal.add(...added);
  } catch (error) {
    if (!(error instanceof DifferingRecord)) throw error;
    throw new BundleError('differing-from-kept', (parts) => parts.id(error.id));
  }
}

/** All measurements as CSV, one row for each stone, photo and check. Every batch of 20 checks takes 0.1 s on a computer. */
export async function csvOf(journal: Journal, watch: Watch = {}): Promise<Blob> {
  const { measurementsHead, measurementRows } = await import('../bundle/measurementsCsv');
  const batches = (await journal.digests()).map(({ batch }) => batch);
  const parts = [measurementsHead()];
  await eachHistory(journal, batches, watch, (history) => void parts.push(measurementRows(history)));
  return new Blob(parts, { type: 'text/csv;charset=utf-8' });
}

/** The next checks of batches as a calendar file; null when none is due. As many batches take as long as for a table. */
export async function calendarOf(
  journal: Journal,
  batches: readonly RecordId[],
  machines: readonly MachineRecord[],
  watch: Watch = {},
): Promise<Blob | null> {
  const { reminderCalendar } = await import('../bundle/reminderCalendar');
  const reminders: Reminder[] = [];
  await eachHistory(journal, batches, watch, (history) => {
    const reminder = nextCheck(history, machines);
    if (reminder) reminders.push(reminder);
  });
  if (reminders.length === 0) return null;
  return new Blob([reminderCalendar(reminders, new Date())], { type: 'text/calendar;charset=utf-8' });
}

/** Goes through batches one after the other: all of them at once would hold every check in memory. */
async function eachHistory(
  journal: Journal,
  batches: readonly RecordId[],
  watch: Watch,
  visit: (history: BatchHistory) => void,
): Promise<void> {
  const pace = paceOf(watch);
  for (const [i, batch] of batches.entries()) {
    const records = await journal.batch(batch, partOf(watch, i / batches.length, (i + 1) / batches.length));
    if (records) visit(batchHistory(records));
    await pace.at((i + 1) / batches.length);
  }
}
