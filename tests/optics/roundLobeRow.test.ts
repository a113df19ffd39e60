import { expect, it } from 'vitest';
import { roundLobeRow } from '../../src/optics/roundLobeRow';
import grid from '../golden/lobeGrid.json';

it('agrees with numeric integration from the center to far outside, from near-mirror to matte', () => {
  // tests/golden/lobeGrid.json: SciPy quad over the disc, line by line.
  for (const [v, q, share] of grid.disc as [number, number, number][]) {
    const into = new Float64Array(2);
    roundLobeRow(Float64Array.of(0.6 * v, v), Float64Array.of(-0.8 * v, 0), q, into);
    for (const found of into) expect(Math.abs(found - share)).toBeLessThan(grid.tolerance + 1e-12);
  }
});
