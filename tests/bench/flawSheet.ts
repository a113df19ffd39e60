import sharp, { type OverlayOptions } from 'sharp';
import type { Photo } from '../../src/image/photo';
import type { StoneFlawMatch } from './flawMatch';
import type { TrueStone } from './truth';

/** A stone on the sheet. */
export interface SheetStone {
  readonly photo: Photo;
  readonly name: string;
  readonly truth: TrueStone;
  readonly match: StoneFlawMatch;
}

const PANEL_PX = 420;
const COLUMNS = 2;
const TINT = { found: '#20e020', missed: '#ff3030', invented: '#ffffff' } as const;

/** How much is wrong on a stone: the worst come first on the sheet. */
export function badness({ match }: Pick<SheetStone, 'match'>): number {
  return [match.pit, match.fracture, match.chip].reduce(
    (sum, { missed, invented }) => sum + missed.length + invented.length,
    0,
  );
}

/** Writes each stone plain and marked beside it: green found, red missed, white invented. */
export async function writeFlawSheet(stones: readonly SheetStone[], path: string): Promise<void> {
  const panels: OverlayOptions[] = [];
  for (const [i, stone] of stones.entries()) {
    const left = 2 * PANEL_PX * (i % COLUMNS);
    const top = PANEL_PX * Math.floor(i / COLUMNS);
    const { plain, marked } = await panelOf(stone);
    panels.push({ input: plain, left, top }, { input: marked, left: left + PANEL_PX, top });
  }
  const height = PANEL_PX * Math.max(1, Math.ceil(stones.length / COLUMNS));
  await sharp({ create: { width: 2 * PANEL_PX * COLUMNS, height, channels: 3, background: '#000' } })
    .composite(panels)
    .png()
    .toFile(path);
}

async function panelOf({ photo, name, truth, match }: SheetStone) {
  const rows = truth.outline.map(([row]) => row);
  const columns = truth.outline.map(([, column]) => column);
  const top = Math.max(0, Math.floor(Math.min(...rows)) - 8);
  const left = Math.max(0, Math.floor(Math.min(...columns)) - 8);
  const height = Math.min(photo.heightPx - top, Math.ceil(Math.max(...rows)) + 8 - top);
  const width = Math.min(photo.widthPx - left, Math.ceil(Math.max(...columns)) + 8 - left);
  const scale = PANEL_PX / Math.max(width, height);
  const raw = { width: photo.widthPx, height: photo.heightPx, channels: 4 } as const;
  const plain = await sharp(photo.rgba, { raw })
    .extract({ left, top, width, height })
    .resize(PANEL_PX, PANEL_PX, { fit: 'contain', position: 'left top', background: '#000' })
    .removeAlpha()
    .png()
    .toBuffer();
  const place = (row: number, column: number) => [(column - left) * scale, (row - top) * scale] as const;
  const marks = marksOf(match, place, scale);
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${PANEL_PX}" height="${PANEL_PX}">${marks}<text x="4" y="${PANEL_PX - 6}" font-size="13" fill="#fff">${name}</text></svg>`;
  const marked = await sharp(plain)
    .composite([{ input: Buffer.from(svg) }])
    .png()
    .toBuffer();
  return { plain, marked };
}

type Line = readonly (readonly [number, number])[];
interface Drawn {
  readonly row: number;
  readonly column: number;
  readonly kind: string;
  readonly path?: Line | undefined;
}

function marksOf(
  match: StoneFlawMatch,
  place: (row: number, column: number) => readonly [number, number],
  scale: number,
): string {
  const draw = ({ row, column, kind, path }: Drawn, color: string) => {
    const [x, y] = place(row, column);
    const points = path?.map(([r, c]) => place(r, c).join(','));
    return points
      ? `<polyline points="${points.join(' ')}" fill="none" stroke="${color}" stroke-width="1.5" opacity="0.8"/>`
      : `<circle cx="${x}" cy="${y}" r="${(kind === 'pit' ? 8 : 18) * Math.max(1, scale / 2)}" fill="none" stroke="${color}" stroke-width="1.5"/>`;
  };
  return [match.pit, match.fracture, match.chip]
    .flatMap(({ hits, missed, invented }) => [
      ...hits.map(({ claim }) => draw(claim, TINT.found)),
      ...missed.map((truth) => draw(truth, TINT.missed)),
      ...invented.map((claim) => draw(claim, TINT.invented)),
    ])
    .join('');
}
