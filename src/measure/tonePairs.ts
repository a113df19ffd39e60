import type { Photo, Placing } from '../image/photo';
import { placeIn } from '../image/placeIn';

/** What one level of a channel became in another shot. */
export interface TonePair {
  readonly channel: 0 | 1 | 2;
  /** Recorded values, 0 to 1. */
  readonly base: number;
  readonly other: number;
  /** Places it was seen at. */
  readonly count: number;
}

/** Side of the even places compared, pixels; about this many are looked at. */
const SIDE_PX = 4;
const PLACES = 60_000;
/** A level of the joint histogram is this many codes wide, and needs so many places; the flattest half of them count. */
const LEVEL_CODES = 4;
const FEWEST = 16;
/** Codes that are not noise, in a level; and codes short of the limit, in all channels of both shots. */
const SOUND = { from: 6, to: 244 };

/** One place: mean codes of red, green, blue in both shots, and the range of codes in the first. */
interface Compared {
  readonly base: readonly number[];
  readonly other: readonly number[];
  readonly range: number;
}

/**
 * Joint histogram of two shots of one scene, reduced to its ridge: for each level of a channel in the first
 * shot, the median level in the other, over places where the picture is flat.
 *
 * @param base - The shot whose levels are followed.
 * @param other - Another of the same size.
 * @param placing - Where the first one's pixels lie in the other.
 * @returns Up to 61 levels a channel; none when nothing is well exposed in both.
 * @see Mann 2000, "Comparametric equations with practical applications in quantigraphic image processing"
 *   (the comparagram).
 */
export function tonePairs(base: Photo, other: Photo, placing: Placing): TonePair[] {
  const places = compare(base, other, placing);
  return ([0, 1, 2] as const).flatMap((channel) => {
    const levels = new Map<number, Compared[]>();
    for (const place of places) {
      const level = Math.floor(place.base[channel]! / LEVEL_CODES);
      const there = levels.get(level);
      if (there) there.push(place);
      else levels.set(level, [place]);
    }
    return [...levels.values()]
      .filter((there) => there.length >= FEWEST)
      .map((there): TonePair => {
        there.sort((a, b) => a.range - b.range);
        const flat = there.slice(0, Math.ceil(there.length / 2));
        const middle = (of: 'base' | 'other') => median(flat.map((place) => place[of][channel]!)) / 255;
        return { channel, base: middle('base'), other: middle('other'), count: flat.length };
      })
      .filter((pair) => 255 * Math.min(pair.base, pair.other) >= SOUND.from);
  });
}

function compare(base: Photo, other: Photo, placing: Placing): Compared[] {
  const { widthPx, heightPx } = base;
  const stride = Math.max(SIDE_PX / 2, Math.floor(Math.sqrt((widthPx * heightPx) / PLACES)));
  const places: Compared[] = [];
  for (let row = 0; row + SIDE_PX <= heightPx; row += stride) {
    for (let column = 0; column + SIDE_PX <= widthPx; column += stride) {
      const [r, c] = placeIn(placing, base, row, column).map(Math.round) as [number, number];
      if (r < 0 || c < 0 || r + SIDE_PX > heightPx || c + SIDE_PX > widthPx) continue;
      const here = blockOf(base, row, column);
      const there = blockOf(other, r, c);
      if (!here || !there) continue;
      places.push({ base: here.mean, other: there.mean, range: here.range });
    }
  }
  return places;
}

/** Mean codes and widest range of a block; null when any of it is near the limit. */
function blockOf({ rgba, widthPx }: Photo, row: number, column: number) {
  const mean = [0, 0, 0];
  let range = 0;
  for (let c = 0; c < 3; c++) {
    let least = 255;
    let most = 0;
    for (let y = row; y < row + SIDE_PX; y++) {
      for (let x = column; x < column + SIDE_PX; x++) {
        const code = rgba[4 * (y * widthPx + x) + c]!;
        mean[c]! += code / (SIDE_PX * SIDE_PX);
        least = Math.min(least, code);
        most = Math.max(most, code);
      }
    }
    if (most > SOUND.to) return null;
    range = Math.max(range, most - least);
  }
  return { mean, range };
}

function median(values: number[]): number {
  values.sort((a, b) => a - b);
  return (values[(values.length - 1) >> 1]! + values[values.length >> 1]!) / 2;
}
