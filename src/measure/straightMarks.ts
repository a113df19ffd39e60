import type { Mask } from '../image/raster';

/** A straight run of places in a map of shares. */
export interface StraightMark {
  /** Both ends, rows and columns of the map. */
  readonly ends: readonly [readonly [number, number], readonly [number, number]];
  readonly lengthPlaces: number;
  /** Mean of the largest shares on it, 0 to 1. */
  readonly peak: number;
  /** Sum of all its shares over its length: how much of it is marked. */
  readonly filled: number;
}

/** Places of less share count for nothing. */
const LEAST_SHARE = 0.05;
/** Directions tried: half a turn in equal steps. */
const DIRECTIONS = 72;
/** Places so far from a line's middle belong to it, and so far are used up by it. */
const ON_LINE = 1.2;
const USED_UP = 2;
/** A run ends where nothing is marked for so many places. */
const GAP = 8;
/** Runs with less share in all, or shorter, are no lines. */
const LEAST_SUM = 0.6;
const LEAST_LENGTH = 7;
const MOST_LINES = 60;
const PEAK_PLACES = 6;

interface Place {
  readonly row: number;
  readonly column: number;
  readonly share: number;
}

/**
 * Takes a map of shares apart into straight runs, whatever their directions and wherever they cross: the strongest
 * first, its places taken out before the next is looked for.
 *
 * @param shares - One share a place.
 * @param mask - The stone.
 * @see Hough 1962, US patent 3 069 654; Duda & Hart 1972, CACM 15(1) (lines by direction and offset).
 */
export function straightMarks(shares: Float32Array, mask: Mask): StraightMark[] {
  let left: Place[] = [];
  for (let i = 0; i < shares.length; i++) {
    const share = shares[i]!;
    if (share >= LEAST_SHARE && mask.data[i])
      left.push({ row: Math.floor(i / mask.width), column: i % mask.width, share });
  }
  const marks: StraightMark[] = [];
  while (left.length > 2 && marks.length < MOST_LINES) {
    const run = settled(left, strongestRun(left));
    if (run.sum < LEAST_SUM) break;
    if (run.to - run.from >= LEAST_LENGTH) marks.push(markOf(run));
    const kept = left.filter(
      (place) =>
        Math.abs(offset(place, run)) > USED_UP ||
        along(place, run) < run.from - USED_UP ||
        along(place, run) > run.to + USED_UP,
    );
    // Nothing taken away would mean the same run for ever.
    left = kept.length < left.length ? kept : [];
  }
  return marks;
}

/** A line by the angle of its direction (down from right) and its offset from the origin, and a stretch of it. */
interface Run {
  readonly angle: number;
  readonly middle: number;
  readonly from: number;
  readonly to: number;
  readonly sum: number;
  readonly places: readonly Place[];
}

type Line = Pick<Run, 'angle' | 'middle'>;

const across = ({ row, column }: Place, angle: number) => row * Math.cos(angle) - column * Math.sin(angle);
const offset = (place: Place, { angle, middle }: Line) => across(place, angle) - middle;
const along = ({ row, column }: Place, { angle }: Line) => row * Math.sin(angle) + column * Math.cos(angle);

function strongestRun(places: readonly Place[]): Run {
  let best: Line = { angle: 0, middle: 0 };
  let most = 0;
  for (let k = 0; k < DIRECTIONS; k++) {
    const angle = (k * Math.PI) / DIRECTIONS;
    const bins = new Map<number, number>();
    for (const place of places) {
      const at = Math.round(across(place, angle));
      bins.set(at, (bins.get(at) ?? 0) + place.share);
    }
    for (const [at, sum] of bins) {
      const around = sum + 0.5 * ((bins.get(at - 1) ?? 0) + (bins.get(at + 1) ?? 0));
      if (around > most) [most, best] = [around, { angle, middle: at }];
    }
  }
  return bestRun(places, best);
}

/** The stretch of a line with the most share on it, gaps not too long. */
function bestRun(places: readonly Place[], line: Line): Run {
  const on = places
    .filter((place) => Math.abs(offset(place, line)) <= ON_LINE)
    .map((place) => ({ place, at: along(place, line) }))
    .sort((a, b) => a.at - b.at);
  const none: Run = { ...line, from: 0, to: 0, sum: 0, places: [] };
  let best = none;
  let first = 0;
  on.forEach(({ at }, i) => {
    const next = on[i + 1];
    if (next && next.at - at <= GAP) return;
    const own = on.slice(first, i + 1);
    const sum = own.reduce((total, { place }) => total + place.share, 0);
    if (sum > best.sum)
      best = { ...line, from: own[0]!.at, to: at, sum, places: own.map(({ place }) => place) };
    first = i + 1;
  });
  return best;
}

/** The run again on the line that fits its own places best, twice. */
function settled(places: readonly Place[], start: Run): Run {
  let run = start;
  for (let k = 0; k < 2 && run.places.length > 2; k++) {
    const again = bestRun(places, fitted(run.places));
    if (again.sum <= run.sum) break;
    run = again;
  }
  return run;
}

/** The line through the center of gravity along the direction of largest spread. */
function fitted(places: readonly Place[]): Line {
  const total = places.reduce((sum, { share }) => sum + share, 0);
  const mean = (pick: (place: Place) => number) =>
    places.reduce((sum, place) => sum + place.share * pick(place), 0) / total;
  const [row, column] = [mean((place) => place.row), mean((place) => place.column)];
  const rr = mean((place) => (place.row - row) ** 2);
  const cc = mean((place) => (place.column - column) ** 2);
  const rc = mean((place) => (place.row - row) * (place.column - column));
  const angle = 0.5 * Math.atan2(2 * rc, cc - rr);
  return { angle, middle: across({ row, column, share: 1 }, angle) };
}

function markOf(run: Run): StraightMark {
  const { angle, middle, from, to, places } = run;
  const at = (s: number) =>
    [s * Math.sin(angle) + middle * Math.cos(angle), s * Math.cos(angle) - middle * Math.sin(angle)] as const;
  const largest = places
    .map(({ share }) => share)
    .sort((a, b) => b - a)
    .slice(0, PEAK_PLACES);
  return {
    ends: [at(from), at(to)],
    lengthPlaces: to - from + 1,
    peak: largest.reduce((sum, share) => sum + share, 0) / largest.length,
    filled: run.sum / (to - from + 1),
  };
}
