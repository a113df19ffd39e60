import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FlawReport, PixelPoint } from '../../src/analysis/report';
import { stoneFlaws } from '../../src/analysis/stoneFlaws';
import type { Photo } from '../../src/image/photo';
import type { Engines } from '../../src/vision/openEngines';
import { realPicture } from './realPicture';
import type { Verdict } from './realVerdict';

/**
 * Flaws on real surfaces: ground tiles (Huang, Qiu, Yuan 2020) and cracked plates (Tabernik et al. 2020). Neither
 * says how large a pixel is nor where the light stands; the scales are choices, and the lamp is left unknown.
 */
const TILES_PX_PER_MM = 10;
const PLATES_PX_PER_MM = 28;
/** Both are cut out of larger surfaces: mirrored around, so that the cut is not taken for an outline, pixels. */
const AROUND_PX = 40;
/** A claim this near to a masked pixel is on it, pixels. */
const NEAR_PX = 5;
/** The first files of each kind were looked at while developing, the rest never. */
const LOOKED_AT = { Blowhole: 10, Crack: 6, Free: 14, plateCracked: 6, plateSound: 12 } as const;

interface Case {
  readonly picture: string;
  readonly mask: string | null;
  readonly isDevelopment: boolean;
}

interface Found {
  /** Whether any claim lies on the mask. */
  readonly hit: boolean;
  /** Claims off the mask. */
  readonly off: number;
}

/** The verdicts on tiles and plates, development and test apart; only the test part has targets. */
export async function flawVerdicts(dataFolder: string, engines: Engines): Promise<Verdict[]> {
  const tiles = join(dataFolder, 'tiles');
  const tile = (kind: 'Blowhole' | 'Crack' | 'Free') =>
    rowsOf(join(tiles, 'truth.csv'))
      .filter((row) => row.class === kind)
      .map((row, i): Case => {
        const picture = join(tiles, kind.toLowerCase(), row.file!);
        const mask = kind === 'Free' ? null : picture.replace(/jpg$/, 'png');
        return { picture, mask, isDevelopment: i < LOOKED_AT[kind] };
      });
  const plates = join(dataFolder, 'cracks');
  const plate = (isCracked: boolean) =>
    rowsOf(join(plates, 'truth.csv'))
      .filter((row) => Number(row.blobs) > 0 === isCracked)
      .map((row, i): Case => {
        const picture = join(plates, row.file!);
        const looked = isCracked ? LOOKED_AT.plateCracked : LOOKED_AT.plateSound;
        return {
          picture,
          mask: isCracked ? picture.replace(/jpg$/, 'png') : null,
          isDevelopment: i < looked,
        };
      });
  const hole = ({ kind }: FlawReport) => kind === 'pit' || kind === 'chip';
  const line = ({ kind }: FlawReport) => kind === 'fracture';
  const at = (scale: number, wanted: (flaw: FlawReport) => boolean) => (one: Case) =>
    look(one, 1 / scale, wanted, engines);
  return [
    ...(await rates('tiles: blowholes', tile('Blowhole'), at(TILES_PX_PER_MM, hole), 'recall', 0.9)),
    ...(await rates('tiles: pits on sound ones', tile('Free'), at(TILES_PX_PER_MM, hole), 'off', 0.05)),
    ...(await rates('tiles: cracks', tile('Crack'), at(TILES_PX_PER_MM, line), 'recall', 0.8)),
    ...(await rates('plates: cracks', plate(true), at(PLATES_PX_PER_MM, line), 'recall', 0.85)),
    ...(await rates('plates: fractures on sound ones', plate(false), at(PLATES_PX_PER_MM, line), 'off', 0.1)),
  ];
}

async function rates(
  what: string,
  cases: readonly Case[],
  look: (one: Case) => Promise<Found>,
  rate: 'recall' | 'off',
  target: number,
): Promise<Verdict[]> {
  const found: (Found & Case)[] = [];
  for (const one of cases) found.push({ ...one, ...(await look(one)) });
  return [true, false].map((isDevelopment) => {
    const part = found.filter((one) => one.isDevelopment === isDevelopment);
    const total = part.reduce((sum, { hit, off }) => sum + (rate === 'recall' ? Number(hit) : off), 0);
    const value = total / Math.max(1, part.length);
    return {
      what: `${what}, ${isDevelopment ? 'looked at' : 'test'} (${part.length})`,
      measured: value.toFixed(2),
      target: rate === 'recall' ? `≥ ${target}` : `≤ ${target} each`,
      met: rate === 'recall' ? value >= target : value <= target,
    };
  });
}

async function look(
  { picture, mask }: Case,
  mmPerPx: number,
  wanted: (flaw: FlawReport) => boolean,
  engines: Engines,
): Promise<Found> {
  const photo = await realPicture(picture);
  const flaws = await flawsOn(photo, mmPerPx, engines);
  const claims = flaws.filter((flaw) => flaw.confidence >= 0.5 && wanted(flaw));
  if (!mask) return { hit: false, off: claims.length };
  const truth = await realPicture(mask);
  const on = claims.filter((claim) => touches(claim, truth));
  return { hit: on.length > 0, off: claims.length - on.length };
}

/** All flaws claimed on a picture that shows nothing but surface, in its own pixels. */
async function flawsOn(photo: Photo, mmPerPx: number, engines: Engines): Promise<FlawReport[]> {
  const wide = mirroredAround(photo, AROUND_PX);
  const [bottom, right] = [wide.heightPx - 2, wide.widthPx - 2];
  const outline: PixelPoint[] = [
    [1, 1],
    [1, right],
    [bottom, right],
    [bottom, 1],
  ];
  const { flaws } = await stoneFlaws(engines, { photo: wide, outline, mmPerPx, lampXy: [0, 0] });
  const back = ([row, column]: PixelPoint): PixelPoint => [row - AROUND_PX, column - AROUND_PX];
  const isInside = ({ row, column }: FlawReport) =>
    row >= 0 && column >= 0 && row < photo.heightPx && column < photo.widthPx;
  return flaws
    .map((flaw) => ({
      ...flaw,
      row: flaw.row - AROUND_PX,
      column: flaw.column - AROUND_PX,
      ...(flaw.path ? { path: flaw.path.map(back) } : {}),
    }))
    .filter(isInside);
}

/** A photo with its outermost pixels mirrored outward. */
function mirroredAround({ widthPx, heightPx, rgba }: Photo, around: number): Photo {
  const width = widthPx + 2 * around;
  const height = heightPx + 2 * around;
  const wide = new Uint8ClampedArray(4 * width * height);
  const mirrored = (at: number, size: number) => {
    const inside = Math.abs(at - around);
    return inside < size ? inside : Math.max(0, 2 * size - 2 - inside);
  };
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const from = 4 * (mirrored(row, heightPx) * widthPx + mirrored(column, widthPx));
      wide.set(rgba.subarray(from, from + 4), 4 * (row * width + column));
    }
  }
  return { widthPx: width, heightPx: height, rgba: wide };
}

function touches(claim: FlawReport, mask: Photo): boolean {
  const places = claim.path ?? [[claim.row, claim.column] as const];
  return places.some(([row, column]) => {
    for (let r = Math.round(row) - NEAR_PX; r <= row + NEAR_PX; r++) {
      for (let c = Math.round(column) - NEAR_PX; c <= column + NEAR_PX; c++) {
        const isInside = r >= 0 && c >= 0 && r < mask.heightPx && c < mask.widthPx;
        if (isInside && mask.rgba[4 * (r * mask.widthPx + c)]! > 127) return true;
      }
    }
    return false;
  });
}

/** Rows of a CSV file without quotes, by their column names. */
function rowsOf(path: string): Record<string, string>[] {
  const [head, ...lines] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  const names = head!.split(',');
  return lines.map((line) => Object.fromEntries(line.split(',').map((value, i) => [names[i]!, value])));
}
