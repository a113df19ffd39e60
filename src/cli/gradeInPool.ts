import { join } from 'node:path';
import { DoneFile } from './doneFile';
import { type GradePool, openPool } from './gradePool';
import type { Command } from './readCommandLine';
import { readRig } from './rigFile';
import { EXIT, type Voice } from './voice';
import { makePictureFolder, pictureNames } from './writePictures';

/** A photo that could not be graded although it is none to be refused. */
interface Broken {
  readonly path: string;
  readonly why: string;
}

/**
 * Grades photos several at a time, each told of when it is done. What was done before a stop is not done again. Held in
 * memory are the photos' names and one photo in each process, however many there are.
 *
 * @returns An exit status, `EXIT`.
 */
export async function gradeInPool(
  command: Command & { readonly jobs: number },
  say: Voice['say'],
): Promise<number> {
  const { photos, jobs, jsonFile, pictureFolder, step, material, ballMm, ballAt, lampMovedFile } = command;
  const rig = command.rigFile === null ? null : await readRig(command.rigFile);
  const settings = { step, material, ballMm, ballAt, lampMovedFile, rig };
  const done = jsonFile === null ? null : await DoneFile.open(jsonFile, { settings, pictureFolder });
  if (pictureFolder !== null) await makePictureFolder(pictureFolder);
  const names = pictureFolder === null ? null : pictureNames(photos);
  const left = [...new Set(photos)].filter((path) => !done?.has(path));
  if (left.length < photos.length)
    say(`${photos.length - left.length} of ${photos.length} were done before.`);
  const pool = openPool(Math.min(jobs, Math.max(1, left.length)), settings);
  try {
    const pictureOf = (path: string) => names && join(pictureFolder ?? '', names.get(path) ?? '');
    const { broken, isAnyRefused } = await gradeLeft(left, pool, jobs, { done, pictureOf, say });
    for (const { path, why } of broken) say(`${path}: not graded. ${why}`);
    await done?.finish(photos, broken.length === 0);
    if (broken.length > 0) return EXIT.broke;
    return isAnyRefused || done?.isAnyRefused ? EXIT.refused : EXIT.graded;
  } finally {
    pool.close();
  }
}

interface Place {
  readonly done: DoneFile | null;
  readonly pictureOf: (path: string) => string | null;
  readonly say: Voice['say'];
}

/** Keeps as many photos under way as there are processes. */
async function gradeLeft(
  left: readonly string[],
  pool: GradePool,
  jobs: number,
  { done, pictureOf, say }: Place,
): Promise<{ broken: Broken[]; isAnyRefused: boolean }> {
  const began = performance.now();
  const broken: Broken[] = [];
  let [next, count, peakBytes, isAnyRefused] = [0, 0, 0, false];
  const goOn = async () => {
    for (let path = left[next++]; path !== undefined; path = left[next++]) {
      try {
        const graded = await pool.grade(path, pictureOf(path));
        await done?.add(path, graded.entry, graded.isRefused);
        say(graded.summary);
        peakBytes = Math.max(peakBytes, graded.peakBytes);
        isAnyRefused ||= graded.isRefused;
        count++;
      } catch (error) {
        broken.push({ path, why: error instanceof Error ? error.message : String(error) });
      }
    }
  };
  await Promise.all(Array.from({ length: jobs }, goOn));
  const seconds = (performance.now() - began) / 1000;
  if (count > 0) say(rateWords(count, seconds, jobs, peakBytes));
  return { broken, isAnyRefused };
}

function rateWords(count: number, seconds: number, jobs: number, peakBytes: number): string {
  const photos = count === 1 ? '1 photo' : `${count} photos`;
  const rate = `${(count / seconds).toFixed(2)} photos/s`;
  return `${photos} in ${seconds.toFixed(1)} s, ${rate}, ${jobs} at a time, each with ${Math.round(peakBytes / 1e6)} MB at most.`;
}
