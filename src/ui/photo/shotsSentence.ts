import { withDecimalMark } from '../../texts/plainNumber';
import { texts } from '../../texts/speech';

/**
 * Says how a photo was merged with other shots of the scene.
 *
 * @param ratios - Light in each shot as a share of the first, the first included; at least two.
 */
export function shotsSentence(ratios: readonly number[]): string {
  const lights = ratios.slice(1).map((ratio) => `${withDecimalMark(String(Number(ratio.toPrecision(2))))} ×`);
  return texts().tray.merged(lights);
}
