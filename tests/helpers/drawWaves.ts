import { normalNoise } from './normalNoise';

const WAVES = 40;

/**
 * Slopes of a skin with waves of one length in all directions, as a sum of plane waves.
 *
 * @param waves - Root mean square of the slope along one direction, length of the waves, and the seed of their phases.
 * @returns Slope to the right and up by pixels to the right and up.
 */
export function drawWaves(waves: { slope: number; wavelengthPx: number; seed: number }) {
  const random = normalNoise(waves.seed);
  // The squares of all slopes together are twice those along one direction, and a sine's square is a half.
  const amplitude = waves.slope * Math.sqrt(4 / WAVES);
  const parts = Array.from({ length: WAVES }, (_, i) => ({
    turn: (Math.PI * (i + 0.3 * random())) / WAVES,
    phase: 100 * random(),
    strength: amplitude * random(),
  }));
  return (right: number, up: number): readonly [number, number] => {
    const sum: [number, number] = [0, 0];
    for (const { turn, phase, strength } of parts) {
      const [x, y] = [Math.cos(turn), Math.sin(turn)];
      const slope = strength * Math.cos((2 * Math.PI * (x * right + y * up)) / waves.wavelengthPx + phase);
      sum[0] += slope * x;
      sum[1] += slope * y;
    }
    return sum;
  };
}
