import { expect, it } from 'vitest';
import { viewOpinions } from '../../src/grading/viewOpinions';
import { measuredStone } from '../helpers/measuredStone';

it('is content with a stone seen well', () => {
  expect(viewOpinions(measuredStone(), 0.08)).toEqual([]);
  expect(viewOpinions(measuredStone())).toEqual([]);
});

it('says what stands in the way', () => {
  const reasons = viewOpinions(measuredStone({ cutOff: true, inspectedCm2: 1 }), 0.75).map(
    ({ reason }) => reason,
  );
  expect(reasons).toEqual([
    'The edge of the photo cuts this stone off: move it into the picture.',
    'It is only 40 pixels long, too few to see pits: go closer.',
    'Only 18 % of what the photo shows of it could be inspected: turn it and take another.',
  ]);
});

it('does not trip over a stone of no area', () => {
  expect(viewOpinions(measuredStone({ areaMm2: 0, inspectedCm2: 0 }))[0]?.reason).toContain('Only 0 %');
});
