import type { BowlColor } from './bowlColor';
import type { BowlFit } from './bowlFit';

/** How many other places of a stone look much like this one: pattern repeats, pits are few. */
export interface BowlCrowd {
  /** Of about its size and at least nearly as marked, per cm². */
  readonly perCm2: number;
  /** Those of them that have its color too, per cm². */
  readonly alikePerCm2: number;
}

/** Nearly as marked: this share of gain and of shade. */
const NEARLY = 0.6;
/** Of about its size: within this factor, as a logarithm. */
const SIZE = 0.8;
/** Of its color: chromaticities no farther apart. */
const COLOR = 0.03;

/**
 * Counts the others that look like one bowl.
 *
 * @param fits - All bowls of the stone.
 * @param colors - Their colors, in the same order.
 * @param index - The one in question.
 * @param areaCm2 - Area of the stone as seen, cm², > 0.
 */
export function bowlCrowd(
  fits: readonly BowlFit[],
  colors: readonly BowlColor[],
  index: number,
  areaCm2: number,
): BowlCrowd {
  const own = fits[index]!;
  const ownColor = colors[index]!;
  let all = 0;
  let alike = 0;
  fits.forEach((other, k) => {
    if (k === index || other.gain < NEARLY * own.gain || shadeOf(other) < NEARLY * shadeOf(own)) return;
    if (Math.abs(Math.log(other.radiusPx / own.radiusPx)) > SIZE) return;
    if (Math.hypot(other.row - own.row, other.column - own.column) < own.radiusPx + other.radiusPx) return;
    all++;
    const { red, blue } = colors[k]!;
    if (Math.hypot(red - ownColor.red, blue - ownColor.blue) < COLOR) alike++;
  });
  return { perCm2: all / areaCm2, alikePerCm2: alike / areaCm2 };
}

const shadeOf = ({ dark, fall, crossFall }: BowlFit) => dark + 0.5 * Math.hypot(fall, crossFall);
