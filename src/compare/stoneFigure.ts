import type { StoneDigest } from '../history/batchDigest';
import { coarseStay } from './coarseStay';
import type { CompareWhat } from './compareBy';

/** What a stone adds to a comparison. */
export interface StoneFigure {
  readonly stone: StoneDigest;
  /**
   * Gloss as a share of the ceiling; weeks in coarse; share of length lost, below zero where a stone was measured
   * longer than at first; 1 for a finished stone, else 0.
   */
  readonly value: number;
  /** Ends of the reading's interval; both the value itself where none is known. */
  readonly low: number;
  readonly high: number;
  /** `waiting`: still in coarse or under way, so the value may grow; `given up`: set aside. */
  readonly state: 'known' | 'waiting' | 'given up';
}

/** A stone's figure; null when nothing was kept that gives one. */
export function stoneFigure(stone: StoneDigest, what: CompareWhat): StoneFigure | null {
  switch (what) {
    case 'gloss':
      return glossFigure(stone);
    case 'coarse':
      return coarseFigure(stone);
    case 'size':
      return sizeFigure(stone);
    case 'finished':
      return finishedFigure(stone);
  }
}

function glossFigure(stone: StoneDigest): StoneFigure | null {
  const { gloss } = stone;
  if (gloss === null) return null;
  const [low, high] = [gloss.gu60Low / gloss.ceilingGu60, gloss.gu60High / gloss.ceilingGu60];
  return { stone, value: gloss.shareOfCeiling, low, high, state: 'known' };
}

function coarseFigure(stone: StoneDigest): StoneFigure | null {
  const stay = coarseStay(stone);
  if (stay === null) return null;
  const { time, end } = stay;
  return { stone, value: time, low: time, high: time, state: end === 'left' ? 'known' : end };
}

function sizeFigure(stone: StoneDigest): StoneFigure | null {
  const loss = lengthLoss(stone);
  return loss === null ? null : { stone, value: loss, low: loss, high: loss, state: 'known' };
}

function finishedFigure(stone: StoneDigest): StoneFigure {
  const value = stone.action === 'finished' ? 1 : 0;
  const state = value === 1 ? 'known' : stone.action === 'set-aside' ? 'given up' : 'waiting';
  return { stone, value, low: value, high: value, state };
}

/** Share of its length that a stone lost from its first check to its last; null before a second check. */
export const lengthLoss = ({ checkCount, lengthMm }: StoneDigest) => lost(checkCount, lengthMm);

/** Share of its area, seen from above, that a stone lost from its first check to its last; null before a second check. */
export const areaLoss = ({ checkCount, areaMm2 }: StoneDigest) => lost(checkCount, areaMm2);

function lost(checkCount: number, [first, last]: readonly [number, number]): number | null {
  return checkCount < 2 || !(first > 0) ? null : 1 - last / first;
}
