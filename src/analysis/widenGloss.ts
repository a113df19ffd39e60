import { fresnelReflectance } from '../optics/fresnelReflectance';
import type { HighlightReport, RoughnessAtIndex } from './report';

/** Half of a 90 % interval of a normal distribution, standard deviations. */
const NORMAL_90 = 1.645;

/**
 * Widens the intervals of a highlight's roughness for an uncertain lamp radiance.
 *
 * A highlight of height h is fitted with h / (radiance · F(n)), so an error of the radiance acts like one of F(n):
 * how roughness follows F is known from the indices at which it was fitted.
 *
 * @param highlight - With intervals that take the radiance for known.
 * @param radianceSd - Spread of the radiance's logarithm, 0 or more.
 * @param cosHalf - Cosine between the half-vector and the view, 0 to 1.
 * @returns The same roughness with intervals that hold all the same.
 */
export function widenGloss(highlight: HighlightReport, radianceSd: number, cosHalf: number): HighlightReport {
  const { byIndex } = highlight;
  const logs = byIndex.map(({ n, alpha }) => ({
    mirrored: Math.log(fresnelReflectance(n, cosHalf)),
    rough: Math.log(alpha),
  }));
  const widened = byIndex.map((knot, k): RoughnessAtIndex => {
    const [below, above] = [logs[Math.max(0, k - 1)]!, logs[Math.min(logs.length - 1, k + 1)]!];
    const slope = above === below ? 0 : (above.rough - below.rough) / (above.mirrored - below.mirrored);
    const added = NORMAL_90 * radianceSd * Math.abs(slope);
    const down = Math.hypot(Math.log(knot.alpha / knot.alphaLow), added);
    const up = Math.hypot(Math.log(knot.alphaHigh / knot.alpha), added);
    return {
      ...knot,
      alphaLow: knot.alpha * Math.exp(-down),
      alphaHigh: Math.min(1, knot.alpha * Math.exp(up)),
    };
  });
  return { ...highlight, byIndex: widened };
}
