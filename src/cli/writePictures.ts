import { mkdir } from 'node:fs/promises';
import { basename, extname, join } from 'node:path';
import sharp from 'sharp';
import type { Photo } from '../image/photo';
import { sortingPicture } from '../picture/sortingPicture';
import type { GradedFile } from './gradeFile';
import { Misuse } from './misuse';

/**
 * Writes the sorting picture of every photo that was graded, as PNG: `tray.jpg` becomes `tray-sorted.png`.
 *
 * @param folder - Made when it is not there.
 */
export async function writePictures(folder: string, graded: readonly GradedFile[]): Promise<void> {
  await mkdir(folder, { recursive: true }).catch(() => {
    throw new Misuse(`Cannot make the folder "${folder}".`);
  });
  const taken = new Set<string>();
  for (const { entry, photo, report, grades } of graded) {
    if (!photo || !report || !grades) continue;
    const svg = sortingPicture(report, grades, { legend: true });
    await drawOver(photo, svg, join(folder, freeName(entry.file, taken)));
  }
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

/** Photos of the same name from different folders get a number. */
function freeName(file: string, taken: Set<string>): string {
  const stem = basename(file, extname(file));
  let name = `${stem}-sorted.png`;
  for (let i = 2; taken.has(name); i++) name = `${stem}-sorted-${i}.png`;
  taken.add(name);
  return name;
}
