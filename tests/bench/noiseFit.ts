import { type LevelNoise, lnLikelihood } from '../../src/grading/levelNoise';
import { type FoundAmount, foundShare, offBy } from './levelNoise';

/** The noise that best explains repeated readings, and by how much a normal distribution explains them worse. */
export interface NoiseFit extends LevelNoise {
  /** Difference of logarithmic likelihoods; positive where readings have the heavier tails that `LevelNoise` states. */
  readonly lnOverNormal: number;
}

const SCALES = Array.from({ length: 49 }, (_, k) => 0.02 * 50 ** (k / 48));

/**
 * Most likely noise of repeated readings, on a ladder of scales from 0.02 to 1.
 *
 * @param stones - One list for each stone: what its checks found. Stones without such flaws are left out.
 */
export function fitNoise(stones: readonly (readonly FoundAmount[])[]): NoiseFit {
  const used = stones.filter(([first]) => first !== undefined && first.true > 0);
  const share = foundShare(used.flat());
  const offs = used.map((checks) => checks.map((one) => offBy(one, share)));
  const heavy = likeliest(offs, (own, noise) => {
    // Student's t with two degrees of freedom: density 1 / (2 √2 scale) at its middle.
    return lnLikelihood(own, noise) - own.length * Math.log(2 * Math.SQRT2 * noise.fresh);
  });
  const normal = likeliest(offs, lnNormal);
  return { kept: heavy.kept, fresh: heavy.fresh, lnOverNormal: heavy.ln - normal.ln };
}

function likeliest(
  offs: readonly (readonly number[])[],
  lnOf: (offs: readonly number[], noise: LevelNoise) => number,
) {
  let best = { kept: 0, fresh: 0, ln: Number.NEGATIVE_INFINITY };
  for (const kept of SCALES) {
    for (const fresh of SCALES) {
      const ln = offs.reduce((sum, own) => sum + lnOf(own, { kept, fresh }), 0);
      if (ln > best.ln) best = { kept, fresh, ln };
    }
  }
  return best;
}

/** Normal throughout: covariance fresh² I + kept² 11ᵀ. */
function lnNormal(offs: readonly number[], { kept, fresh }: LevelNoise): number {
  const n = offs.length;
  const sum = offs.reduce((total, off) => total + off, 0);
  const squares = offs.reduce((total, off) => total + off * off, 0);
  const all = fresh ** 2 + n * kept ** 2;
  const far = (squares - (kept * sum) ** 2 / all) / fresh ** 2;
  return -(n * Math.log(2 * Math.PI) + 2 * (n - 1) * Math.log(fresh) + Math.log(all) + far) / 2;
}
