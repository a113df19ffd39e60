import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { EdgeRegion } from '../../src/optics/edgeLine';
import { slantedEdge } from '../../src/optics/slantedEdge';

/** One line of the table that the real-photograph bench prints. */
export interface BenchRow {
  readonly what: string;
  readonly measured: number;
  readonly expected: number;
  /** Largest allowed distance from `expected`, in the same unit. */
  readonly tolerance: number;
  readonly met: boolean;
}

const REGION = { column: 130, row: 66, width: 120, height: 260 };

/**
 * Measures the photographed slanted edge of the data folder against its printed ISO 12233 result.
 *
 * The printed result fits its line in one pass without a window, which turns it by 0.05°; this program's
 * two windowed passes come out about 1 % sharper.
 *
 * @param dataFolder - Folder that holds `slanted-edge/Edge.pgm` and `slanted-edge/oecf.txt`.
 * @returns Half-contrast frequency, rise and angle, each with what is expected.
 * @throws Error from the file system if the folder is not there.
 */
export function slantedEdgeRows(dataFolder: string): BenchRow[] {
  const folder = join(dataFolder, 'slanted-edge');
  const curve = readFileSync(join(folder, 'oecf.txt'), 'utf8')
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number) as [linear: number, code: number]);
  const region = linearRegion(readFileSync(join(folder, 'Edge.pgm')), curve);
  // The printed edge spread is on the full scale of the tone curve, 0 to 1, so the rise is read off on that scale.
  const found = slantedEdge(region, { left: 0, right: 1 });
  return [
    row('edge MTF50, cycles/px', found.mtf50CyclesPerPx, 0.3062, 0.05 * 0.3062),
    row('edge 10–90 % rise, px', found.rise10to90Px, 1.64, 0.05 * 1.64),
    row('edge angle, degrees', found.angleDeg, -5.248, 0.2),
  ];
}

function row(what: string, measured: number, expected: number, tolerance: number): BenchRow {
  return { what, measured, expected, tolerance, met: Math.abs(measured - expected) <= tolerance };
}

/** Cuts the region out of a binary 8-bit PGM and undoes the tone curve. */
function linearRegion(pgm: Buffer, curve: readonly [linear: number, code: number][]): EdgeRegion {
  const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.toString('latin1', 0, 64));
  if (!header) throw new Error('Edge.pgm is not a binary 8-bit PGM.');
  const imageWidth = Number(header[1]);
  const data = new Float64Array(REGION.width * REGION.height);
  for (let r = 0; r < REGION.height; r++) {
    for (let c = 0; c < REGION.width; c++) {
      const code = pgm[header[0].length + (REGION.row + r) * imageWidth + REGION.column + c]!;
      data[r * REGION.width + c] = linearOf(code, curve);
    }
  }
  return { width: REGION.width, height: REGION.height, data };
}

function linearOf(code: number, curve: readonly [linear: number, code: number][]): number {
  const after = Math.max(
    1,
    curve.findIndex(([, above]) => above >= code),
  );
  const [lowLinear, lowCode] = curve[after - 1]!;
  const [highLinear, highCode] = curve[after]!;
  return lowLinear + ((code - lowCode) / (highCode - lowCode)) * (highLinear - lowLinear);
}
