import { Refusal } from '../image/notice';
import type { Photo, Shot } from '../image/photo';
import { exposureFit } from '../measure/exposureFit';
import { tonePairs } from '../measure/tonePairs';
import type { Tone } from '../optics/toneCurve';
import { toneDecoder } from '../optics/toneDecoder';
import { placeShot } from './placeShot';

/** Several shots of one scene made into one photo. */
export interface MergedExposures {
  /** The first shot, which lends its pixels and its unit, carrying the others. */
  readonly photo: Photo;
  /** Light recorded in each shot as a share of the first, the first included. */
  readonly ratios: readonly number[];
  /** The camera's curve over sRGB, as far as the shots tell it. */
  readonly tone: Tone;
}

/** Where the curve found leaves more than this over, relative, the shots do not show the same light. */
const MOST_MISFIT = 0.12;

/**
 * Merges shots of one scene at different exposures: finds how they lie on each other, how much light each
 * let in, and the camera's tone curve. Pixels are merged only when they are read (`image/mergeShots.ts`).
 *
 * @param shots - The photo at hand and one or more shots darker or brighter, all upright.
 * @returns The photo at hand, unchanged but for what it carries.
 * @throws Refusal `exposures-differ-in-size`, `exposures-differ-in-scene`.
 */
export function mergeExposures([base, ...others]: readonly [Photo, ...Photo[]]): MergedExposures {
  if (others.some(({ widthPx, heightPx }) => widthPx !== base.widthPx || heightPx !== base.heightPx)) {
    throw new Refusal('exposures-differ-in-size');
  }
  const placed = others.map((other) => placeShot(base, other));
  if (placed.some(({ isSameScene }) => !isSameScene)) throw new Refusal('exposures-differ-in-scene');
  const fit = exposureFit(
    others.map((other, i) => tonePairs(base, other, placed[i]!.placing)),
    others.map((other) => (other.exposure && base.exposure ? other.exposure / base.exposure : null)),
  );
  if (!fit || fit.misfit > MOST_MISFIT) throw new Refusal('exposures-differ-in-scene');
  const { exposures, tone } = fit;
  const decode = toneDecoder(tone);
  const shots = others.map(
    ({ rgba }, i): Shot => ({ rgba, exposure: exposures[i]!, placing: placed[i]!.placing }),
  );
  const merging = {
    linear: Float32Array.from({ length: 256 }, (_, code) => decode(code / 255)),
    shots,
    clipLevel: Math.max(1, ...exposures.map((exposure) => 1 / Math.max(...exposure))),
  };
  const ratios = exposures.map(([red, green, blue]) => (red + green + blue) / 3);
  return { photo: { ...base, merging }, ratios: [1, ...ratios], tone };
}
