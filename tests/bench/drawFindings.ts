import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { PhotoReport } from '../../src/analysis/report';
import type { Photo } from '../../src/image/photo';
import type { Truth } from './truth';

/** Draws what was found (white, magenta) and what is true (thin cyan, yellow) over a photo, for looking at. */
export async function drawFindings(
  photo: Photo,
  report: PhotoReport,
  truth: Pick<Truth, 'photo' | 'mmPerPx' | 'stones'>,
  folder: string,
): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const polygon = (points: readonly (readonly [number, number])[], color: string, width: number) =>
    `<polygon points="${points.map(([r, c]) => `${c},${r}`).join(' ')}" fill="none" stroke="${color}" stroke-width="${width}"/>`;
  const circle = (row: number, column: number, r: number, color: string) =>
    `<circle cx="${column}" cy="${row}" r="${r}" fill="none" stroke="${color}" stroke-width="1.5"/>`;
  const parts: string[] = [];
  for (const stone of truth.stones) {
    parts.push(polygon(stone.outline, 'cyan', 1));
    for (const flaw of stone.flaws) {
      const color = flaw.visible ? 'yellow' : 'gray';
      if (flaw.path) parts.push(polygon([...flaw.path, ...[...flaw.path].reverse()], color, 1));
      else parts.push(circle(flaw.row, flaw.column, (flaw.diameterMm ?? 1) / 2 / truth.mmPerPx + 3, color));
    }
  }
  for (const stone of report.stones) {
    parts.push(polygon(stone.outline, 'white', 1.5));
    if (stone.highlight) parts.push(circle(stone.highlight.row, stone.highlight.column, 6, 'lime'));
    for (const flaw of stone.flaws.filter((one) => one.confidence >= 0.5)) {
      const color = flaw.kind === 'fracture' ? 'orange' : 'magenta';
      parts.push(circle(flaw.row, flaw.column, (flaw.diameterMm ?? 2) / 2 / report.mmPerPx + 6, color));
    }
  }
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${photo.widthPx}" height="${photo.heightPx}">${parts.join('')}</svg>`;
  await sharp(photo.rgba, { raw: { width: photo.widthPx, height: photo.heightPx, channels: 4 } })
    .gamma(1.6)
    .composite([{ input: Buffer.from(svg) }])
    .png()
    .toFile(join(folder, truth.photo.replace(/\.\w+$/, '-findings.png')));
}
