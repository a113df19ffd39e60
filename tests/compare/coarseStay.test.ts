import { expect, it } from 'vitest';
import { coarseStay } from '../../src/compare/coarseStay';
import { inventedDigest } from './inventedDigest';

it('is over for a stone that was seen after a later step or told to advance', () => {
  expect(coarseStay(inventedDigest({ coarseDays: 42 }))).toEqual({ time: 6, end: 'left' });
  expect(coarseStay(inventedDigest({ coarseDays: 21, steps: ['coarse'], action: 'advance' }))).toEqual({
    time: 3,
    end: 'left',
  });
});

it('goes on for a stone that repeats or was sent back', () => {
  expect(coarseStay(inventedDigest({ steps: ['coarse'], action: 'repeat' }))?.end).toBe('waiting');
  expect(coarseStay(inventedDigest({ steps: ['coarse'], action: 'look-closer' }))?.end).toBe('waiting');
  expect(coarseStay(inventedDigest({ action: 'back-to-coarse' }))?.end).toBe('waiting');
  expect(coarseStay(inventedDigest({ lastStep: 'coarse', action: 'repeat' }))?.end).toBe('waiting');
});

it('was given up for a stone set aside there, not for one set aside later', () => {
  expect(coarseStay(inventedDigest({ steps: ['coarse'], action: 'set-aside' }))?.end).toBe('given up');
  expect(coarseStay(inventedDigest({ action: 'set-aside' }))?.end).toBe('left');
});

it('is not known of a stone that was never seen in coarse', () => {
  expect(coarseStay(inventedDigest({ coarseDays: null }))).toBeNull();
});
