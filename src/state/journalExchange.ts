import { nextCheck } from '../bundle/nextCheck';
import { batchHistory } from '../history/batchHistory';
import type { Journal, KeptPhoto } from '../journal/openJournal';
import type { MachineRecord, RecordId } from '../journal/records';

/** What a bundle brought. */
export interface TakenIn {
  readonly records: number;
  /** Records that were not there before. */
  readonly fresh: number;
  readonly photos: number;
}

/** The whole journal as one bundle. */
export async function bundleOf(journal: Journal): Promise<Blob> {
  const { writeBundle } = await import('../bundle/writeBundle');
  const photos = await Promise.all((await journal.photoKeys()).map((key) => journal.photo(key)));
  return writeBundle({
    records: await journal.all(),
    photos: photos.filter((photo): photo is KeptPhoto => photo !== null),
  });
}

/**
 * Takes a bundle in: all of it or nothing. What is here already stays as it is.
 *
 * @throws BundleError with a sentence that says why and what to do.
 */
export async function takeInBundle(journal: Journal, file: Blob): Promise<TakenIn> {
  const { readBundle } = await import('../bundle/readBundle');
  const { records, photos } = await readBundle(file);
  const known = new Set(await journal.recordIds());
  await journal.add(records, photos);
  return {
    records: records.length,
    fresh: records.filter(({ id }) => !known.has(id)).length,
    photos: photos.length,
  };
}

/** All measurements as CSV, one row for each stone, photo and check. */
export async function csvOf(journal: Journal): Promise<Blob> {
  const { measurementsCsv } = await import('../bundle/measurementsCsv');
  const batches = await Promise.all((await journal.digests()).map(({ batch }) => journal.batch(batch)));
  const histories = batches.flatMap((records) => (records ? [batchHistory(records)] : []));
  return new Blob([measurementsCsv(histories)], { type: 'text/csv;charset=utf-8' });
}

/** The next checks of batches as a calendar file; null when none is due. */
export async function calendarOf(
  journal: Journal,
  batches: readonly RecordId[],
  machines: readonly MachineRecord[],
): Promise<Blob | null> {
  const { reminderCalendar } = await import('../bundle/reminderCalendar');
  const found = await Promise.all(batches.map((batch) => journal.batch(batch)));
  const reminders = found.flatMap((records) => {
    const reminder = records && nextCheck(batchHistory(records), machines);
    return reminder ? [reminder] : [];
  });
  if (reminders.length === 0) return null;
  return new Blob([reminderCalendar(reminders, new Date())], { type: 'text/calendar;charset=utf-8' });
}
