import type { Mask, Raster } from '../image/raster';
import type { Blur } from './stoneSurface';

/** A thin dark line: the pixels of its middle, in no order. */
export interface DarkLine {
  readonly pixels: readonly LinePixel[];
  /** The strength it keeps to all along, ln units. */
  readonly level: number;
}

export interface LinePixel {
  readonly row: number;
  readonly column: number;
  /** Unit vector across the line: down and right in the picture. */
  readonly acrossDown: number;
  readonly acrossRight: number;
  /** Second derivative of log light across the line, times the squared scale it was measured at; ln units. */
  readonly strength: number;
}

/** Scale at which lines are measured, mm: answers most to lines of 0.3 to 0.5 mm, the width of an open fracture. */
const SIGMA_MM = 0.16;
/**
 * Strengths a line keeps to all along, ln units. Every level is looked at by itself: what hangs together with
 * a pattern at a low one may stand alone at a higher one.
 */
const LEVELS = [0.08, 0.15, 0.27];
/** Gaps up to this are bridged, mm. */
const GAP_MM = 0.35;
/** Shorter lines are left out, mm. */
const LEAST_MM = 2.2;

/**
 * Finds thin dark lines: ridges of the second derivative, at several levels; lines of different levels overlap.
 *
 * @param light - Log light, filled beyond the stone.
 * @param inner - Where lines are looked for.
 * @param mmPerPx - Scale.
 * @param blur - Gaussian blur.
 * @see Steger 1998 (lines as ridges of the second derivative).
 */
export function darkLines(light: Raster, inner: Mask, mmPerPx: number, blur: Blur): DarkLine[] {
  const sigmaPx = Math.max(0.9, SIGMA_MM / mmPerPx);
  const ridge = ridgePixels(blur(light, sigmaPx), inner, sigmaPx ** 2);
  const reach = Math.max(1, Math.round(GAP_MM / mmPerPx));
  return LEVELS.flatMap((level) => {
    const strong = new Map([...ridge].filter(([, pixel]) => pixel.strength >= level));
    return joined(strong, inner, reach)
      .filter((pixels) => pixels.length * mmPerPx >= LEAST_MM)
      .map((pixels) => ({ pixels, level }));
  });
}

/** Pixels at which the second derivative is largest across its own direction. */
function ridgePixels({ width, height, data }: Raster, inner: Mask, scale: number): Map<number, LinePixel> {
  const strengths = new Float32Array(width * height);
  const angles = new Float32Array(width * height);
  for (let row = 1; row < height - 1; row++) {
    for (let column = 1; column < width - 1; column++) {
      const i = row * width + column;
      const twice = 2 * data[i]!;
      const rr = data[i - width]! + data[i + width]! - twice;
      const cc = data[i - 1]! + data[i + 1]! - twice;
      const rc =
        (data[i - width - 1]! + data[i + width + 1]! - data[i - width + 1]! - data[i + width - 1]!) / 4;
      const most = (rr + cc) / 2 + Math.hypot((rr - cc) / 2, rc);
      strengths[i] = scale * most;
      angles[i] = 0.5 * Math.atan2(2 * rc, cc - rr);
    }
  }
  const ridge = new Map<number, LinePixel>();
  inner.data.forEach((inside, i) => {
    const strength = strengths[i]!;
    if (!inside || strength < LEVELS[0]!) return;
    const acrossRight = Math.cos(angles[i]!);
    const acrossDown = Math.sin(angles[i]!);
    const row = Math.floor(i / width);
    const beside = (sign: 1 | -1) =>
      between(strengths, width, row + sign * acrossDown, i - row * width + sign * acrossRight);
    if (strength < beside(1) || strength <= beside(-1)) return;
    ridge.set(i, { row, column: i - row * width, acrossDown, acrossRight, strength });
  });
  return ridge;
}

/** Bilinear reading. */
function between(values: Float32Array, width: number, row: number, column: number): number {
  const i = Math.floor(row) * width + Math.floor(column);
  const y = row - Math.floor(row);
  const x = column - Math.floor(column);
  const upper = (1 - x) * (values[i] ?? 0) + x * (values[i + 1] ?? 0);
  const lower = (1 - x) * (values[i + width] ?? 0) + x * (values[i + width + 1] ?? 0);
  return (1 - y) * upper + y * lower;
}

/** Ridge pixels gathered into lines; neighbors up to `reach` pixels apart belong together when they run alike. */
function joined(ridge: Map<number, LinePixel>, { width }: Mask, reach: number): LinePixel[][] {
  const lines: LinePixel[][] = [];
  const open = new Set(ridge.keys());
  for (const first of ridge.keys()) {
    if (!open.delete(first)) continue;
    const line: LinePixel[] = [];
    const next = [first];
    for (let i = next.pop(); i !== undefined; i = next.pop()) {
      const here = ridge.get(i)!;
      line.push(here);
      for (let y = -reach; y <= reach; y++) {
        for (let x = -reach; x <= reach; x++) {
          const j = i + y * width + x;
          const there = open.has(j) ? ridge.get(j)! : null;
          if (there && runsOn(here, there)) {
            open.delete(j);
            next.push(j);
          }
        }
      }
    }
    lines.push(line);
  }
  return lines;
}

/** Least agreement of two neighbors' directions: cosine of 50°. */
const ALIKE = 0.64;

/** Whether the second pixel lies along the first one's line, and beside no gap runs much otherwise. */
function runsOn(here: LinePixel, there: LinePixel): boolean {
  const [y, x] = [there.row - here.row, there.column - here.column];
  const distance = Math.hypot(y, x);
  if (distance < 1.5) return true;
  const alike = Math.abs(here.acrossDown * there.acrossDown + here.acrossRight * there.acrossRight);
  const offLine = Math.abs(y * here.acrossDown + x * here.acrossRight) / distance;
  return alike > ALIKE && offLine < 0.5;
}
