import type { StoneDigest } from '../history/batchDigest';
import type { Stay } from './stay';

const DAYS_IN_WEEK = 7;

/**
 * Weeks a stone spent in coarse, from its batch's start to its last check there.
 *
 * It has left when it was seen after a later step or was told to advance; a stone sent back waits again. One that was
 * set aside without a later step never left.
 *
 * @returns Time in weeks; null for a stone that was never seen in coarse.
 */
export function coarseStay({ coarseDays, steps, action }: StoneDigest): Stay | null {
  if (coarseDays === null) return null;
  const time = coarseDays / DAYS_IN_WEEK;
  if (action === 'back-to-coarse') return { time, end: 'waiting' };
  const hasLeft = steps.some((step) => step !== 'coarse') || action === 'advance' || action === 'finished';
  return { time, end: hasLeft ? 'left' : action === 'set-aside' ? 'given up' : 'waiting' };
}
