import { glossUnits } from '../optics/glossUnits';
import { plainNumber } from '../texts/plainNumber';
import { texts } from '../texts/speech';
import { FINISH_FROM_GU60 } from './finish';
import { type Advice, type RigNumbers, STONE_RADIUS_MM } from './rigNumbers';
import { roughnessSpread } from './roughnessSpread';

/** Quartz: what is tumbled most. Handbook value of its ordinary ray, from memory. */
const QUARTZ_INDEX = 1.544;
/** Half of a 90 % interval of a normal distribution, standard deviations. */
const NORMAL_90 = 1.645;
/** Share of a mirror's full height that a highlight's middle must reach through the blur. */
const FULL_HEIGHT = 0.95;
/** Smaller than this share of its present size no lamp is asked to become: the blur is then to blame. */
const SMALLEST_CHANGE = 0.25;

/**
 * Whether the lamp has the size to tell gloss from mirror on a stone of usual size.
 *
 * Too large: at the roughness α where gloss turns to mirror (85 units at 60°), the spread of ln α (see
 * `roughnessSpread`) must leave the 90 % interval no wider than the gloss level itself, from α(85) to α(70).
 * Too small: a lamp whose image on the stone has radius r = a·R is blurred by σ to the height 1 − exp(−r²/2σ²)
 * (a disc under a Gaussian, at its center), which must be 95 % or more; else height says roughness where there is
 * only blur.
 *
 * @param rig - Lamp and camera.
 * @returns In order, or by how much to change the lamp.
 */
export function lampAdvice(rig: RigNumbers): Advice {
  const { sourceSlope, light } = rig;
  const blurMm = rig.blurPx * rig.mmPerPx;
  const words = texts().rig;
  const deg = plainNumber(light.angularDiameterDeg);
  const leastSlope = (blurMm * Math.sqrt(-2 * Math.log(1 - FULL_HEIGHT))) / STONE_RADIUS_MM;
  if (sourceSlope < leastSlope) {
    const times = plainNumber(Math.ceil((10 * leastSlope) / sourceSlope) / 10);
    return advice(words.lampTooSmall(deg, times));
  }
  const [mirror, gloss] = borders();
  const mostSpread = Math.log(gloss / mirror) / 2 / NORMAL_90;
  const isTold = (slope: number) =>
    roughnessSpread(mirror, { sourceSlope: slope, blurMm, radiusMm: STONE_RADIUS_MM }) <= mostSpread;
  const enough = [1, 0.5, SMALLEST_CHANGE].find((share) => isTold(share * sourceSlope));
  if (enough === 1) return { about: 'lamp', inOrder: true, sentence: words.lampGood(deg) };
  if (enough === undefined || enough * sourceSlope < leastSlope) {
    return advice(words.lampHopeless(deg));
  }
  return advice(words.lampTooLarge(deg, enough === 0.5 ? 'half' : 'quarter'));
}

const advice = (sentence: string): Advice => ({ about: 'lamp', inOrder: false, sentence });

let known: readonly [mirror: number, gloss: number] | null = null;

/** Roughness of quartz at the lower ends of mirror and gloss. */
function borders(): readonly [mirror: number, gloss: number] {
  known ??= [roughnessAtGloss(FINISH_FROM_GU60.mirror), roughnessAtGloss(FINISH_FROM_GU60.gloss)];
  return known;
}

/** Gloss falls as roughness grows: the interval is halved until it is narrow. */
function roughnessAtGloss(gu60: number): number {
  let [low, high] = [0.001, 0.5];
  while (high / low > 1.001) {
    const middle = Math.sqrt(low * high);
    if (glossUnits(middle, QUARTZ_INDEX, 60) > gu60) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}
