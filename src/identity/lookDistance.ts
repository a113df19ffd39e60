import { silhouettesApart } from '../measure/silhouette';
import type { StoneLook } from '../measure/stoneLook';

/**
 * Root mean square differences between two photos of one stone, whichever way it lies, over the development batches of
 * the bench (`npm run bench:identity`): quantiles of L*, a*, b*; bands of each, ln units; silhouette, radii; ln of size.
 */
const SPREADS = {
  colors: [3, 1.2, 1.6],
  pattern: [0.19, 0.1, 0.14],
  silhouette: 0.02,
  size: 0.08,
} as const;
/** Color and pattern are many figures that say the same again: together they weigh as much as so many. */
const LOOK_SIGNS = 4;
/** From one check to the next a stone loses about this of ln of its length. */
const LOSS = 0.02;
/** No kind of sign alone settles the matter: a stone turned over may show another face. */
const MOST = 30;

/**
 * How much two looks speak against being one stone's: half of −2 ln likelihood, 0 when they agree to the digit.
 *
 * @param seen - Now.
 * @param known - Then.
 * @param checksBetween - Checks from then to now; a stone shrinks with each.
 */
export function lookDistance(seen: StoneLook, known: StoneLook, checksBetween = 1): number {
  const look =
    (squares(seen.colors, known.colors, SPREADS.colors) +
      squares(seen.pattern, known.pattern, SPREADS.pattern)) /
    (seen.colors.length + seen.pattern.length);
  const shape = (silhouettesApart(seen.silhouette, known.silhouette) / SPREADS.silhouette) ** 2;
  const shrunk = Math.log(seen.size[2] / known.size[2]) / 2 + LOSS * checksBetween;
  return (bounded(LOOK_SIGNS * look) + bounded(shape) + bounded((shrunk / SPREADS.size) ** 2)) / 2;
}

const bounded = (square: number) => MOST * (1 - Math.exp(-square / MOST));

/** Squared differences over spreads, added up; each third of the figures has a spread of its own. */
function squares(a: readonly number[], b: readonly number[], spreads: readonly number[]): number {
  const third = a.length / 3;
  return a.reduce((sum, value, i) => sum + ((value - b[i]!) / spreads[Math.floor(i / third)]!) ** 2, 0);
}
