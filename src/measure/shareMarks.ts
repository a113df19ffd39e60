import type { Mask } from '../image/raster';

/** A connected mark of one class in a map of shares. */
export interface ShareMark {
  /** Row-major places of the map. */
  readonly places: readonly number[];
  /** Share of each place, 0 to 1. */
  readonly values: readonly number[];
  /** Mean of the largest shares, 0 to 1. */
  readonly peak: number;
}

/** The peak is the mean of up to so many of the largest shares. */
const PEAK_PLACES = 6;

/**
 * Connected marks of one class: hysteresis, a low threshold for the extent and a higher one for the peak.
 *
 * @param shares - Shares of the class, one a place.
 * @param mask - The stone; places outside belong to no mark.
 * @param low - A mark ends where the share falls to this, 0 to 1.
 * @param leastPeak - Marks with a lower peak are left out, 0 to 1.
 * @returns Marks in reading order of their first place; places that touch at a corner are connected.
 */
export function shareMarks(shares: Float32Array, mask: Mask, low: number, leastPeak: number): ShareMark[] {
  const isOpen = Uint8Array.from(mask.data, (inside, i) => (inside && shares[i]! > low ? 1 : 0));
  const marks: ShareMark[] = [];
  for (let start = 0; start < isOpen.length; start++) {
    if (!isOpen[start]) continue;
    const places = flood(isOpen, start, mask.width);
    const values = places.map((place) => shares[place]!);
    const peak = peakOf(values);
    if (peak >= leastPeak) marks.push({ places, values, peak });
  }
  return marks;
}

/** All places connected with the first one, which are closed as they are taken. */
function flood(isOpen: Uint8Array, start: number, width: number): number[] {
  const height = isOpen.length / width;
  const places = [start];
  isOpen[start] = 0;
  for (let k = 0; k < places.length; k++) {
    const row = Math.floor(places[k]! / width);
    const column = places[k]! % width;
    for (let r = Math.max(0, row - 1); r <= Math.min(height - 1, row + 1); r++) {
      for (let c = Math.max(0, column - 1); c <= Math.min(width - 1, column + 1); c++) {
        const next = r * width + c;
        if (!isOpen[next]) continue;
        isOpen[next] = 0;
        places.push(next);
      }
    }
  }
  return places;
}

function peakOf(values: readonly number[]): number {
  const most = Math.max(1, Math.min(PEAK_PLACES, Math.floor(values.length / 2) + 1));
  const largest = [...values].sort((a, b) => b - a).slice(0, most);
  return largest.reduce((sum, value) => sum + value, 0) / most;
}
