import { expect, it } from 'vitest';
import { squareLobeRow } from '../../src/optics/squareLobeRow';
import { squareLobeShare } from '../../src/optics/squareLobeShare';
import grid from '../golden/lobeGrid.json';

const EXACT_TO = 4e-8;

function shareAt(x: number, y: number, turnRad: number, alphaOverA: number): number {
  const into = new Float64Array(1);
  squareLobeRow(Float64Array.of(x), Float64Array.of(y), turnRad, alphaOverA, into);
  return into[0]!;
}

it('agrees with numeric integration over the whole grid of places and roughnesses', () => {
  // tests/golden/lobeGrid.json: SciPy quad over the square, line by line.
  for (const [x, y, q, share] of grid.square as [number, number, number, number][]) {
    expect(Math.abs(shareAt(x, y, 0, q) - share)).toBeLessThan(grid.tolerance + EXACT_TO);
  }
});

it('turns the square as far as told', () => {
  for (const turn of [0.1, 0.7, 1.4]) {
    const along = Math.cos(turn) * 0.6 + Math.sin(turn) * 0.9;
    const across = Math.cos(turn) * 0.9 - Math.sin(turn) * 0.6;
    expect(Math.abs(shareAt(0.6, 0.9, turn, 0.2) - squareLobeShare(along, across, 0.2))).toBeLessThan(
      EXACT_TO,
    );
  }
});
