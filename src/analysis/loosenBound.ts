import type { GlossBound } from './report';

/** Lower end of a 90 % interval of a normal distribution, standard deviations. */
const NORMAL_90 = 1.645;

/**
 * Lowers the least roughness of a stone without a highlight for an uncertain lamp radiance.
 *
 * A lobe too low to be seen is as low as a²/α² times the mirror's height, so α goes with the root of the radiance.
 *
 * @param bound - That takes the radiance for known.
 * @param radianceSd - Spread of the radiance's logarithm, 0 or more.
 */
export function loosenBound(bound: GlossBound, radianceSd: number): GlossBound {
  const share = Math.exp((-NORMAL_90 * radianceSd) / 2);
  return { byIndex: bound.byIndex.map(({ n, alphaAtLeast }) => ({ n, alphaAtLeast: share * alphaAtLeast })) };
}
