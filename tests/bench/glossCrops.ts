import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { GlossRow } from './glossRow';

/** Longer side of an enlarged crop, pixels. */
const SIDE_PX = 800;
const MARGIN_PX = 6;

/**
 * Writes an enlarged crop of each stone, named after truth and estimate; a ring lies around the place of the highlight.
 *
 * @returns Paths of the files, in the order of the rows.
 */
export async function glossCrops(rows: readonly GlossRow[], folder: string): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const paths: string[] = [];
  for (const row of rows) {
    const path = join(folder, cropName(row));
    await writeCrop(row, path);
    paths.push(path);
  }
  return paths;
}

function cropName({ scene, variant, stone, alpha, reading }: GlossRow): string {
  const estimate = reading ? reading.alpha.toFixed(4) : 'none';
  return `${scene}.${variant}-stone-${String(stone).padStart(2, '0')}-true-${alpha.toFixed(4)}-estimate-${estimate}.png`;
}

async function writeCrop({ photoPath, box, row, column }: GlossRow, path: string): Promise<void> {
  const upright = await sharp(photoPath).rotate().toBuffer({ resolveWithObject: true });
  const { width: fullWidth, height: fullHeight } = upright.info;
  const top = Math.max(0, Math.floor(box.top) - MARGIN_PX);
  const left = Math.max(0, Math.floor(box.left) - MARGIN_PX);
  const height = Math.min(fullHeight, Math.ceil(box.bottom) + MARGIN_PX) - top;
  const width = Math.min(fullWidth, Math.ceil(box.right) + MARGIN_PX) - left;
  const zoom = SIDE_PX / Math.max(width, height);
  const size = { width: Math.round(width * zoom), height: Math.round(height * zoom) };
  const ring = `<circle cx="${(column - left + 0.5) * zoom}" cy="${(row - top + 0.5) * zoom}" r="${SIDE_PX / 8}" fill="none" stroke="cyan" stroke-width="1"/>`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${size.width}" height="${size.height}">${ring}</svg>`;
  const enlarged = await sharp(upright.data)
    .extract({ left, top, width, height })
    .resize({ ...size, fit: 'fill', kernel: 'nearest' })
    .toBuffer();
  await sharp(enlarged)
    .composite([{ input: Buffer.from(svg) }])
    .png()
    .toFile(path);
}
