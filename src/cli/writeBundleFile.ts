import { writeFile } from 'node:fs/promises';
import { BundleError } from '../bundle/bundleError';
import { writeBundle } from '../bundle/writeBundle';
import type { KeptPhoto } from '../journal/openJournal';
import type { JournalRecord } from '../journal/records';
import { batchFromPhotos, type PhotoToKeep } from './batchFromPhotos';
import type { GradedFile } from './gradeFile';
import { keptFile } from './keptFile';
import { Misuse } from './misuse';
import { momentOf } from './photosByMoment';
import type { Command } from './readCommandLine';

/**
 * Writes all photos that were graded as a bundle of one batch, which the page takes in.
 *
 * @returns What was written, in a sentence or two.
 * @throws Misuse if it cannot be written.
 */
export async function writeBundleFile(
  path: string,
  { batchName, step, material }: Pick<Command, 'batchName' | 'step' | 'material'>,
  graded: readonly GradedFile[],
): Promise<string> {
  const photos: PhotoToKeep[] = [];
  const pictures: KeptPhoto[] = [];
  for (const { entry, report, grades } of graded) {
    if (!report || !grades) continue;
    const picture = await keptFile(entry.file);
    pictures.push(picture);
    const day = (await momentOf(entry.file)).slice(0, 10);
    photos.push({ report, grades, day, step, material, photo: picture.key });
  }
  const [first] = photos;
  if (!first) return 'No photo was graded, so no bundle was written.';
  const batch = batchFromPhotos(photos, batchName ?? `Photos from ${first.day} on`);
  const { stones, checks, identities } = batch;
  const bundle = await bundleOf([batch.batch, ...stones, ...checks, ...identities], pictures);
  await writeFile(path, new Uint8Array(await bundle.arrayBuffer())).catch(() => {
    throw new Misuse(`Cannot write "${path}".`);
  });
  const seen = checks.reduce((sum, check) => sum + check.stones.length, 0);
  const named = identities.reduce((sum, identity) => sum + identity.stones.length, 0);
  return `${path}: ${counted(checks.length, 'check')} of ${counted(stones.length, 'stone')}.${unnamed(seen - named)}`;
}

async function bundleOf(records: readonly JournalRecord[], photos: readonly KeptPhoto[]): Promise<Blob> {
  try {
    return await writeBundle({ records, photos });
  } catch (error) {
    throw error instanceof BundleError ? new Misuse(error.message) : error;
  }
}

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`;

function unnamed(count: number): string {
  if (count === 0) return '';
  const were = count === 1 ? 'sighting was' : 'sightings were';
  return ` ${count} ${were} not known for sure and left unnamed: say in the page which stones they are.`;
}
