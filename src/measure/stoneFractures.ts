import { type DarkLine, darkLines } from './darkLines';
import { judgeLine } from './judgeLine';
import { type LineSigns, lineSigns } from './lineSigns';
import type { Blur, StoneSurface } from './stoneSurface';

/** A dark line and how likely it is a fracture. */
export interface StoneFracture {
  readonly line: DarkLine;
  readonly signs: LineSigns;
  readonly confidence: number;
}

/** Grain is averaged over this before lines are read, mm. */
const GRAIN_MM = 0.06;
/** Another line is nearly as deep from this share of the depth on. */
const NEARLY = 0.6;

/**
 * Finds lines on a stone that may be fractures, the likeliest first; of lines that overlap only one.
 *
 * @param surface - The stone.
 * @param blur - Gaussian blur.
 * @param leastConfidence - Lines below it are left out.
 */
export function stoneFractures(surface: StoneSurface, blur: Blur, leastConfidence: number): StoneFracture[] {
  const { logLight, color, seen, inner, mmPerPx, lampSide } = surface;
  const areaCm2 = (seen.data.reduce((sum, inside) => sum + inside, 0) * mmPerPx ** 2) / 100;
  const light = blur(logLight, Math.max(0.5, GRAIN_MM / mmPerPx));
  const measured = darkLines(logLight, inner, mmPerPx, blur).map((line) => ({
    line,
    signs: lineSigns(line, light, color, seen, mmPerPx, lampSide),
  }));
  const judged = measured.map(({ line, signs }) => {
    const others = measured.filter(
      (other) =>
        other.line !== line && other.line.level === line.level && other.signs.depth > NEARLY * signs.depth,
    );
    const crowdMm = others.reduce((sum, other) => sum + other.signs.lengthMm, 0);
    return { line, signs, confidence: judgeLine(signs, crowdMm / areaCm2) };
  });
  const taken = new Set<number>();
  return judged
    .filter(({ confidence }) => confidence >= leastConfidence)
    .sort((a, b) => b.confidence - a.confidence)
    .filter(({ line }) => {
      const places = line.pixels.map(({ row, column }) => row * inner.width + column);
      const isNew = !places.some((place) => taken.has(place));
      for (const place of places) taken.add(place);
      return isNew;
    });
}
