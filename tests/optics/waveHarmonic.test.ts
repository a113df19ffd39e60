import { expect, it } from 'vitest';
import { waveHarmonic } from '../../src/optics/waveHarmonic';

const JVP = [
  [1, 1, 0.32514710081303305],
  [4, 2.5, 0.09854938295230518],
  [4, 6, -0.12365934503319864],
  [9, 8, 0.08134397978842592],
  [12, 3, 8.836994830192167e-7],
  [12, 15, -0.08938219819351284],
] as const;

it('is minus J₁ for the order 0', () => {
  // Abramowitz and Stegun, table 9.1: J₁(1) = 0.4400505857, J₁(2) = 0.5767248078.
  expect(waveHarmonic(0, 1)).toBeCloseTo(-0.4400505857, 10);
  expect(waveHarmonic(0, 2)).toBeCloseTo(-0.5767248078, 10);
});

it('agrees with SciPy', () => {
  // scipy.special.jvp(m, x).
  for (const [order, cycles, value] of JVP) expect(waveHarmonic(order, cycles)).toBeCloseTo(value, 12);
});

it('shares a wave out over the harmonics so that half of its squared slope lies across the circle', () => {
  for (const cycles of [0.5, 3, 7.3]) {
    let sum = waveHarmonic(0, cycles) ** 2;
    for (let m = 1; m <= 25; m++) sum += 2 * waveHarmonic(m, cycles) ** 2;
    expect(sum).toBeCloseTo(0.5, 12);
  }
});

it('is nothing but the first harmonic for a wave much longer than the circle', () => {
  expect(waveHarmonic(1, 0)).toBeCloseTo(0.5, 12);
  expect(waveHarmonic(4, 0)).toBeCloseTo(0, 12);
});
