import { expect, it } from 'vitest';
import { loosenBound } from '../../src/analysis/loosenBound';
import { widenGloss } from '../../src/analysis/widenGloss';
import { fresnelReflectance } from '../../src/optics/fresnelReflectance';

const INDICES = [1.43, 1.54, 1.65, 1.77];
const profile = { distance: [], measured: [], model: [] };

/** Roughness when height alone tells it: α = a·√(A·F/h − 1) for a highlight of height h. */
const readAt = (radiance: number, n: number) =>
  0.05 * Math.sqrt((radiance * fresnelReflectance(n, 0.95)) / 0.02 - 1);
const byIndex = INDICES.map((n) => {
  const alpha = readAt(15, n);
  return { n, alpha, alphaLow: alpha * 0.99, alphaHigh: alpha * 1.01 };
});
const highlight = { row: 0, column: 0, byIndex, profile };

it('leaves intervals alone when the radiance is known', () => {
  const same = widenGloss(highlight, 0, 0.95).byIndex;
  same.forEach(({ alphaLow, alphaHigh }, k) => {
    expect(alphaLow).toBeCloseTo(byIndex[k]!.alphaLow, 9);
    expect(alphaHigh).toBeCloseTo(byIndex[k]!.alphaHigh, 9);
  });
});

// 1.645 standard deviations are the ends of a 90 % interval.
it('reaches as far as reading the highlight with a radiance 1.645 standard deviations off would', () => {
  const sd = 0.1;
  widenGloss(highlight, sd, 0.95).byIndex.forEach(({ n, alpha, alphaLow, alphaHigh }) => {
    const up = Math.log(readAt(15 * Math.exp(1.645 * sd), n) / alpha);
    expect(Math.log(alphaHigh / alpha) / up).toBeGreaterThan(0.85);
    expect(Math.log(alphaHigh / alpha) / up).toBeLessThan(1.25);
    expect(alphaHigh / alpha).toBeCloseTo(alpha / alphaLow, 2);
  });
});

it('law: the less the radiance is known the wider the interval, and it never passes α = 1', () => {
  const widths = [0, 0.05, 0.1, 0.3, 0.7].map((sd) => {
    const { alphaLow, alphaHigh } = widenGloss(highlight, sd, 0.95).byIndex[1]!;
    return alphaHigh / alphaLow;
  });
  expect(widths).toEqual([...widths].sort((a, b) => a - b));
  expect(new Set(widths).size).toBe(5);
  expect(widenGloss(highlight, 9, 0.95).byIndex[1]!.alphaHigh).toBe(1);
});

it('keeps a reading at a single index as it is', () => {
  const single = { ...highlight, byIndex: byIndex.slice(0, 1) };
  expect(widenGloss(single, 0.5, 0.95).byIndex[0]!.alphaHigh).toBeCloseTo(byIndex[0]!.alphaHigh, 9);
});

it('lowers the least roughness of a stone without a highlight', () => {
  const bound = { byIndex: [{ n: 1.54, alphaAtLeast: 0.2 }] };
  expect(loosenBound(bound, 0)).toEqual(bound);
  // One stop, 90 %: √(2^1.645) = 1.769.
  expect(loosenBound(bound, Math.LN2).byIndex[0]!.alphaAtLeast).toBeCloseTo(0.2 / 1.769, 3);
});
