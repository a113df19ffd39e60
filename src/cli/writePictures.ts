import { mkdir } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import sharp from 'sharp';
import type { Photo } from '../image/photo';
import { sortingPicture } from '../picture/sortingPicture';
import type { GradedFile } from './gradeFile';
import { Misuse } from './misuse';

/** Makes the folder that pictures go to. */
export async function makePictureFolder(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true }).catch(() => {
    throw new Misuse(`Cannot make the folder "${folder}".`);
  });
}

/** Writes the sorting picture of every photo that was graded, as PNG: `tray.jpg` becomes `tray-sorted.png`. */
export async function writePictures(folder: string, graded: readonly GradedFile[]): Promise<void> {
  await makePictureFolder(folder);
  const names = pictureNames(graded.filter(({ photo }) => photo).map(({ entry }) => entry.file));
  for (const one of graded) await drawSorted(one, join(folder, names.get(one.entry.file) ?? ''));
}

/** Writes the sorting picture of a photo, unless it was refused. */
export async function drawSorted({ photo, report, grades }: GradedFile, path: string): Promise<void> {
  if (!photo || !report || !grades) return;
  await drawOver(photo, sortingPicture(report, grades, { legend: true }), path);
}

/** Names of the pictures of photos; those of the same name from different folders get a number. */
export function pictureNames(files: readonly string[]): Map<string, string> {
  const taken = new Set<string>();
  return new Map(files.map((file) => [file, freeName(file, taken)]));
}

/** Lays a drawing over a photo; where the drawing is taller, the picture is made taller. */
async function drawOver(photo: Photo, svg: string, path: string): Promise<void> {
  const drawing = await sharp(Buffer.from(svg)).png().toBuffer({ resolveWithObject: true });
  const raw = { width: photo.widthPx, height: photo.heightPx, channels: 4 } as const;
  const bottom = Math.max(0, drawing.info.height - photo.heightPx);
  const extended = await sharp(photo.rgba, { raw }).extend({ bottom, background: '#fff' }).png().toBuffer();
  await sharp(extended)
    .composite([{ input: drawing.data, left: 0, top: 0 }])
    .png()
    .toFile(path);
}

function freeName(file: string, taken: Set<string>): string {
  const stem = basename(file, extname(file));
  let name = `${stem}-sorted.png`;
  for (let i = 2; taken.has(name); i++) name = `${stem}-sorted-${i}.png`;
  taken.add(name);
  return name;
}
