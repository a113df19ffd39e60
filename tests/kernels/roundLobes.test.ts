import { expect, it } from 'vitest';
import { roundLobes } from '../../src/kernels/lobeKernels';
import grid from '../golden/lobeGrid.json';

/** Rounding of 32-bit floats: half of 2⁻²³ for each of about ten operations on numbers up to one. */
const EXACT_TO = 6e-7;

it('agrees with numeric integration from the center to far outside, from near-mirror to matte', () => {
  // tests/golden/lobeGrid.json: SciPy quad over the disc, line by line.
  for (const [v, q, share] of grid.disc as [number, number, number][]) {
    const into = new Float32Array(2);
    roundLobes(Float32Array.of(0.6 * v, v), Float32Array.of(-0.8 * v, 0), q, into);
    for (const found of into) expect(Math.abs(found - share)).toBeLessThan(grid.tolerance + EXACT_TO);
  }
});
