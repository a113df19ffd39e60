import { stat } from 'node:fs/promises';
import { openEngines } from '../vision/openEngines';
import { type GradedFile, gradeFile } from './gradeFile';
import { gradeInPool } from './gradeInPool';
import { Misuse } from './misuse';
import { jsonOf } from './photoEntry';
import { photoPaths } from './photoPaths';
import { photosByMoment } from './photosByMoment';
import { type Command, readCommandLine } from './readCommandLine';
import { readRig, writeRig } from './rigFile';
import { rigLines } from './rigLines';
import { summaryOf } from './summaryOf';
import { USAGE } from './usage';
import { EXIT, type Voice } from './voice';
import { writeBundleFile } from './writeBundleFile';
import { writeFileOrSay } from './writeFileOrSay';
import { writePictures } from './writePictures';

/**
 * Grades the photos named on a command line and writes what was asked for.
 *
 * @param words - The command line after the command's name.
 * @returns An exit status, `EXIT`.
 */
export async function gradePhotos(words: readonly string[], { say, complain }: Voice): Promise<number> {
  try {
    const read = readCommandLine(words);
    if (!read) {
      say(USAGE);
      return EXIT.graded;
    }
    const command = { ...read, photos: await photosOf(read) };
    if (command.jobs !== null) return await gradeInPool({ ...command, jobs: command.jobs }, say);
    const tell = command.jsonFile === '-' ? complain : say;
    const graded = await gradeAll(command, tell);
    await write(command, graded, say);
    if (command.bundleFile !== null) tell(await writeBundleFile(command.bundleFile, command, graded));
    return graded.some(({ entry }) => entry.refused) ? EXIT.refused : EXIT.graded;
  } catch (error) {
    if (!(error instanceof Misuse)) throw error;
    complain(error.message);
    return EXIT.misused;
  }
}

async function gradeAll(command: Command, tell: (text: string) => void): Promise<GradedFile[]> {
  if (command.lampMovedFile !== null) await checkIsFile(command.lampMovedFile);
  const rig = command.rigFile === null ? null : await readRig(command.rigFile);
  const engines = await openEngines();
  const graded: GradedFile[] = [];
  for (const paths of scenesOf(command)) {
    const one = await gradeFile(paths, { ...command, rig }, engines);
    tell(summaryOf(one.entry));
    tellOfRig(one, command, tell);
    // Pixels are needed again only to draw over them, and many photos do not fit into memory.
    graded.push(command.pictureFolder === null ? { ...one, photo: null } : one);
  }
  return graded;
}

/** All photos in the order of their names; those of a bundle in the order of its checks, but for shots of one scene. */
async function photosOf({ photos, exposures, bundleFile }: Command): Promise<string[]> {
  if (bundleFile === null || exposures) return photoPaths(photos);
  return (await photosByMoment(photos)).map(({ path }) => path);
}

/** Says how lamp and camera are, when a rig is used or saved. */
function tellOfRig(
  { report }: GradedFile,
  { rigFile, saveRigFile }: Command,
  tell: (text: string) => void,
): void {
  if (!report || (rigFile === null && saveRigFile === null)) return;
  const lines = rigLines(report, saveRigFile !== null);
  if (lines !== '') tell(lines);
}

/** The files of each scene: every photo by itself, or all of them one scene's shots. */
function scenesOf({ photos, exposures }: Command): (readonly [string, ...string[]])[] {
  const [first, ...others] = photos;
  return exposures && first !== undefined ? [[first, ...others]] : photos.map((photo) => [photo] as const);
}

async function write(command: Command, graded: readonly GradedFile[], say: (text: string) => void) {
  if (command.pictureFolder !== null) await writePictures(command.pictureFolder, graded);
  const withBall = graded.find(({ report }) => report?.ball);
  if (command.saveRigFile !== null && withBall?.report)
    await writeRig(command.saveRigFile, withBall.report.rig);
  const json = jsonOf(graded.map(({ entry }) => entry));
  if (command.jsonFile === '-') say(json);
  else if (command.jsonFile !== null) await writeFileOrSay(command.jsonFile, `${json}\n`);
}

async function checkIsFile(path: string): Promise<void> {
  const found = await stat(path).catch(() => null);
  if (!found) throw new Misuse(`There is no file "${path}".`);
  if (!found.isFile()) throw new Misuse(`"${path}" is not a file: name the photos in it one by one.`);
}
