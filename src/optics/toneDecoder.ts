import { linearFromSrgb } from './srgbTransfer';
import { recordThroughTone, type Tone } from './toneCurve';

const STEPS = 512;

/**
 * Linear light of recorded values under a tone curve.
 *
 * The curve is followed in 512 steps and read backward; where it falls or stands still, the lower value counts.
 *
 * @returns A function from a recorded value, 0 to 1, to linear light, 0 to 1; 0 for 0 and 1 for 1.
 */
export function toneDecoder(tone: Tone): (recorded: number) => number {
  const inverse = new Float64Array(STEPS + 1);
  let below = 0;
  let belowAt = 0;
  let next = 1;
  for (let i = 1; i <= STEPS && next <= STEPS; i++) {
    const recorded = recordThroughTone(i / STEPS, tone) * STEPS;
    for (; next <= recorded + 1e-9 && next <= STEPS; next++) {
      inverse[next] = (belowAt + ((i - belowAt) * (next - below)) / (recorded - below)) / STEPS;
    }
    if (recorded > below) [below, belowAt] = [recorded, i];
  }
  for (let i = 1; i <= STEPS; i++) inverse[i] = Math.max(inverse[i]!, inverse[i - 1]!);
  return (recorded) => {
    const at = Math.min(1, Math.max(0, recorded)) * STEPS;
    const i = Math.min(STEPS - 1, Math.floor(at));
    return linearFromSrgb(inverse[i]! + (at - i) * (inverse[i + 1]! - inverse[i]!));
  };
}
