import type { StoneDigest } from '../history/batchDigest';
import type { Stay } from './stay';

const DAYS_IN_WEEK = 7;

/**
 * Weeks a stone spent in coarse, from its batch's start to its last check there.
 *
 * It has left when it was last seen after a later step or was told to advance; a stone sent back waits again. One that
 * was set aside in coarse never left.
 *
 * @returns Time in weeks; null for a stone that was never seen in coarse.
 */
export function coarseStay({ coarseDays, lastStep, action }: StoneDigest): Stay | null {
  if (coarseDays === null) return null;
  const time = coarseDays / DAYS_IN_WEEK;
  if (action === 'back-to-coarse') return { time, end: 'waiting' };
  const hasLeft = lastStep !== 'coarse' || action === 'advance' || action === 'finished';
  return { time, end: hasLeft ? 'left' : action === 'set-aside' ? 'given up' : 'waiting' };
}
