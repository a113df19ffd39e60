import { expect, it } from 'vitest';
import { edgeLine } from '../../src/optics/edgeLine';
import { gaussianSlantedEdge } from '../helpers/gaussianSlantedEdge';

const edge = { width: 61, height: 121, angleDeg: 5, sigmaPx: 0.8, left: 0.1, right: 0.9 };

it('finds the line that was drawn', () => {
  const line = edgeLine(gaussianSlantedEdge(edge));
  expect(line.columnsPerRow).toBeCloseTo(Math.tan((5 * Math.PI) / 180), 4);
  expect(line.columnAtTop + 60 * line.columnsPerRow).toBeCloseTo(30, 3);
});

it('does not mind which side is bright', () => {
  const rising = edgeLine(gaussianSlantedEdge(edge));
  const falling = edgeLine(gaussianSlantedEdge({ ...edge, left: 0.9, right: 0.1 }));
  expect(falling.columnsPerRow).toBeCloseTo(rising.columnsPerRow, 10);
  expect(falling.columnAtTop).toBeCloseTo(rising.columnAtTop, 10);
});

it('refuses a region without an edge and one that is too small', () => {
  expect(() => edgeLine({ width: 20, height: 20, data: new Float64Array(400).fill(0.5) })).toThrow(
    'No edge was found: the region is as bright on the left as on the right.',
  );
  expect(() => edgeLine({ width: 5, height: 20, data: new Float64Array(100) })).toThrow(
    '10 × 10 pixels, not 5 × 20.',
  );
});
