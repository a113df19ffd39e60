import { type Warning, type WarningCode, warningAt } from '../image/notice';
import { CLIPPED_SHARE } from './photoChecks';
import type { BallReading } from './readBall';
import type { Rig, RigScene, StoneReport, Unlike } from './report';
import { isBallUnlit } from './unlikeStones';

/**
 * From this share of a tray's things on that look unlike stones the photo itself is warned of. Of trays of development
 * stones none reaches it; outlines that went wrong make 0.38 of one.
 */
const LEAST_SHARE = 0.4;
/** Under these no stone of the photo may go on: what lies there, its light or its ball is not what everything rests on. */
const STANDS_AGAINST_ALL: readonly WarningCode[] = [
  'second-light',
  'lamp-partly',
  'wet-stones',
  'ball-unlit',
  'unlike-stones',
];

/** What is known when doubts are raised. */
export interface Doubts {
  /** The rig as this photo's ball tells it; null without one. */
  readonly own: Rig | null;
  readonly scene: RigScene;
  readonly reading: BallReading | null;
  readonly stones: readonly StoneReport[];
  /** Of each stone what `unlikeStones` says. */
  readonly unlike: readonly (Unlike | null)[];
}

/** Warnings of a ball that the lamp does not light, and of a tray much of which looks unlike stones. */
export function doubtWarnings({ own, scene, reading, stones, unlike }: Doubts): Warning[] {
  const warnings: Warning[] = [];
  if (own && reading && reading.lamp.clippedShare <= CLIPPED_SHARE && isBallUnlit(own, scene)) {
    const { row, column, radiusPx } = reading.ball;
    warnings.push(warningAt('ball-unlit', { marks: [{ row, column, radiusPx }] }));
  }
  const ids = stones.filter((_, i) => unlike[i] !== null).map(({ id }) => id);
  if (ids.length > 0 && ids.length >= LEAST_SHARE * stones.length) {
    warnings.push(warningAt('unlike-stones', { stones: ids }));
  }
  return warnings;
}

/** The stones with what speaks against each: its own looks, or else a warning that stands against all. */
export function doubted(
  stones: readonly StoneReport[],
  unlike: readonly (Unlike | null)[],
  warnings: readonly Warning[],
): StoneReport[] {
  const all = warnings.some(({ code }) => STANDS_AGAINST_ALL.includes(code)) ? 'photo' : null;
  return stones.map((stone, i) => {
    const against = unlike[i] ?? all;
    return against ? { ...stone, unlike: against } : stone;
  });
}
