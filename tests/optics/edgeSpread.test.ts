import { expect, it } from 'vitest';
import { edgeLine } from '../../src/optics/edgeLine';
import { edgeSpread } from '../../src/optics/edgeSpread';
import { gaussianSlantedEdge } from '../helpers/gaussianSlantedEdge';

const edge = { width: 61, height: 121, angleDeg: 5, sigmaPx: 0.8, left: 0.2, right: 0.8 };

it('rises from one side to the other, half way in the middle sample', () => {
  const region = gaussianSlantedEdge(edge);
  const spread = edgeSpread(region, edgeLine(region));
  const middle = (spread.length - 1) / 2;
  expect(spread[0]).toBeCloseTo(0.2, 6);
  expect(spread[middle]).toBeCloseTo(0.5, 2);
  expect(spread[spread.length - 1]).toBeCloseTo(0.8, 6);
});

it('gives the cumulative normal one blur width away', () => {
  const region = gaussianSlantedEdge({ ...edge, sigmaPx: 2, left: 0, right: 1 });
  const spread = edgeSpread(region, edgeLine(region));
  // Φ(1) = 0.8413 (tables of the normal distribution); 2 pixels are 8 samples.
  expect(spread[(spread.length - 1) / 2 + 8]).toBeCloseTo(0.8413, 2);
});

it('refuses an upright edge and one that runs out of the region', () => {
  const region = gaussianSlantedEdge(edge);
  expect(() => edgeSpread(region, { columnAtTop: 30, columnsPerRow: 0 })).toThrow(
    'The edge is too upright: tilt it by 3 to 10 degrees.',
  );
  expect(() => edgeSpread(region, { columnAtTop: 1, columnsPerRow: 0.1 })).toThrow(
    'The edge runs out of the region',
  );
});
