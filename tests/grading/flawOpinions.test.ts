import { expect, it } from 'vitest';
import { flawOpinions } from '../../src/grading/flawOpinions';
import { flawTally } from '../../src/grading/flawTally';
import { DEFAULT_LIMITS } from '../../src/grading/limits';
import type { MeasuredFlaw } from '../../src/grading/measuredStone';
import type { Step } from '../../src/grading/steps';
import { fracture, measuredStone, pits } from '../helpers/measuredStone';

function opinionsOn(flaws: readonly MeasuredFlaw[], step: Step = 'coarse') {
  const limits = DEFAULT_LIMITS[step];
  return flawOpinions(flawTally(measuredStone({ flaws }), limits), step, limits);
}

it('has nothing to say about a stone within the limits', () => {
  expect(opinionsOn(pits(2))).toEqual([]);
});

it('says how many pits there are and how many may be', () => {
  expect(opinionsOn(pits(15))).toEqual([
    { action: 'repeat', reason: '3 pits per cm², the limit for leaving coarse is 0.5.' },
  ]);
});

it('says why pits are worse in a fine step', () => {
  expect(opinionsOn(pits(15), 'fine')).toEqual([
    {
      action: 'back-to-coarse',
      reason:
        '3 pits per cm², the limit at the fine step is 0.5. Pits hold grit that would scratch the batch.',
    },
  ]);
});

it('minds one wide pit even when there are few', () => {
  expect(opinionsOn([{ kind: 'pit', diameterMm: 1.3, confidence: 0.9 }])).toEqual([
    { action: 'repeat', reason: 'The widest pit is 1.3 mm across, the limit for leaving coarse is 0.8 mm.' },
  ]);
});

it('adds up fractures, and gives up on long ones', () => {
  expect(opinionsOn([fracture(2), fracture(3)])[0]?.reason).toBe(
    '2 fractures, 5 mm in all, the limit for leaving coarse is 2 mm.',
  );
  expect(opinionsOn([fracture(11)])).toEqual([
    {
      action: 'set-aside',
      reason:
        'One fracture of 11 mm: fractures like this often only open further. Saw it, break it there, or keep it as it is.',
    },
  ]);
});

it('names the chip', () => {
  expect(opinionsOn([{ kind: 'chip', diameterMm: 2.4, confidence: 0.9 }], 'polish')).toEqual([
    { action: 'back-to-coarse', reason: 'A chip of 2.4 mm, the limit for a finished stone is 1.5 mm.' },
  ]);
});

it('sends fresh scratches of a late step one step back, and lets coarse scratch', () => {
  const scratches = Array.from({ length: 4 }, () => ({
    kind: 'scratch' as const,
    lengthMm: 3,
    confidence: 0.9,
  }));
  expect(opinionsOn(scratches, 'prepolish')).toEqual([
    {
      action: 'repeat',
      reason:
        '4 fresh scratches: coarser grit may have got in. Wash out stones and barrel, and go back to the fine step.',
    },
  ]);
  expect(opinionsOn(scratches, 'coarse')).toEqual([]);
});

it('names the grit that leaves scratches as wide, and sends them behind it', () => {
  const scratches = [0.06, 0.08, 0.09].map(
    (widthMm): MeasuredFlaw => ({ kind: 'scratch', lengthMm: 3, widthMm, confidence: 0.9 }),
  );
  expect(opinionsOn(scratches, 'polish')).toEqual([
    {
      action: 'repeat',
      reason:
        '3 fresh scratches: about 0.08 mm wide, as loose 60/90 silicon carbide leaves them. Wash out stones and barrel, and go back to the medium step.',
    },
  ]);
});

it('asks for another look when doubtful flaws would decide', () => {
  expect(
    opinionsOn([...pits(1), ...pits(4, 0.3), { kind: 'scratch', lengthMm: 2, confidence: 0.3 }]),
  ).toEqual([
    {
      action: 'look-closer',
      reason:
        'The photo may also show 4 pits, too faint to be sure of; real ones would be over the limit. Check with a loupe.',
    },
  ]);
});
