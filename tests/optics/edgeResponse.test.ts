import { expect, it } from 'vitest';
import { edgeResponse } from '../../src/optics/edgeResponse';

it('is the response of one sample step, corrected for the difference', () => {
  const step = Float64Array.from({ length: 161 }, (_, i) => (i < 80 ? 0 : 1));
  for (const [cyclesPerPx, contrast] of edgeResponse(step).slice(1)) {
    // By hand: the central difference of a step is ½, ½, whose transform is cos(w/2); over sin(w)/w, w = π f / 2.
    const w = (Math.PI * cyclesPerPx) / 2;
    expect(contrast).toBeCloseTo(w / (2 * Math.sin(w / 2)), 3);
  }
});

it('is 1 at frequency 0 whichever way the edge goes', () => {
  const falling = Float64Array.from({ length: 161 }, (_, i) => 1 / (1 + Math.exp((i - 80) / 3)));
  const rising = falling.map((value) => 1 - value);
  expect(edgeResponse(falling)[0]).toEqual([0, 1]);
  expect(edgeResponse(rising).map(([, contrast]) => contrast.toFixed(9))).toEqual(
    edgeResponse(falling).map(([, contrast]) => contrast.toFixed(9)),
  );
});

it('refuses a spread that does not change', () => {
  expect(() => edgeResponse(new Float64Array(100).fill(0.3))).toThrow('it does not change from side to side');
});
