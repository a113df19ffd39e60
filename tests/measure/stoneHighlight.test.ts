import { expect, it } from 'vitest';
import { roughnessEstimate } from '../../src/measure/roughnessEstimate';
import { stoneHighlight } from '../../src/measure/stoneHighlight';
import type { Vector } from '../../src/optics/vector';
import { plain } from '../helpers/drawScene';
import { type DrawnStone, drawStone } from '../helpers/drawStone';

const found = (drawn: DrawnStone) => {
  const { stone, mask, light } = drawStone(drawn);
  return stoneHighlight(stone, mask, light);
};
/** Roughness read, or null where no highlight is seen. */
const alphaOf = (drawn: DrawnStone) => found(drawn)?.fit.shape.alpha ?? null;
const surely = (drawn: DrawnStone) => alphaOf(drawn)!;

const dark = plain(0.05);
const red = plain(0.3, 0.1, 0.05);
/** Saturated bands, five times as bright in red as in between. */
const bands = ([x, y]: Vector) => {
  const share = 0.5 + 0.5 * Math.sin(9 * x + 3 * y);
  return [0.06 + 0.24 * share, 0.03 + 0.06 * share, 0.02 + 0.03 * share] as const;
};

// The stones are ellipsoids drawn by summing Walter et al. 2007, eq. 20, over the lamp: tests/helpers/roughMirror.ts.
it.each([
  { alpha: 0.02, colorAt: dark },
  { alpha: 0.05, colorAt: red },
  { alpha: 0.1, colorAt: dark },
  { alpha: 0.15, colorAt: red },
])(
  'reads a roughness of $alpha off a plain stone within a fifth, and in its interval',
  ({ alpha, colorAt }) => {
    const { fit, problem } = found({ alpha, colorAt })!;
    expect(Math.abs(fit.shape.alpha / alpha - 1)).toBeLessThan(0.2);
    const { low, high } = roughnessEstimate(problem, fit);
    expect(low).toBeLessThan(alpha);
    expect(high).toBeGreaterThan(alpha);
  },
);

it('finds the place where the stone faces halfway between lamp and camera', () => {
  const { fit, problem } = found({ alpha: 0.03, colorAt: dark, halfAxes: [8, 8, 8], turnDeg: 0 })!;
  const { window } = problem;
  // On a ball of 48 px the normal is h at 48 h; h lies 20° off the axis toward 120°.
  const reach = 48 * Math.sin((20 * Math.PI) / 180);
  expect(window.column + fit.shape.column * window.stepPx).toBeCloseTo(
    71.5 + reach * Math.cos((120 * Math.PI) / 180),
    0,
  );
  expect(window.row + fit.shape.row * window.stepPx).toBeCloseTo(
    59.5 - reach * Math.sin((120 * Math.PI) / 180),
    0,
  );
});

it('reads a rougher stone as rougher', () => {
  const read = [0.01, 0.03, 0.1, 0.3].map((alpha) => surely({ alpha, colorAt: red }));
  expect(read).toEqual([...read].sort((a, b) => a - b));
});

it.each([0.03, 0.1])('is not led astray by saturated bands at a roughness of %s', (alpha) => {
  const ratio = surely({ alpha, colorAt: bands }) / surely({ alpha, colorAt: red });
  expect(Math.abs(ratio - 1)).toBeLessThan(0.15);
});

it('reads the same roughness at half the exposure', () => {
  const full = surely({ alpha: 0.06, colorAt: red, camera: { blurPx: 0.9 } });
  const half = surely({ alpha: 0.06, colorAt: red, camera: { blurPx: 0.9, exposure: 0.5 } });
  expect(Math.abs(half / full - 1)).toBeLessThan(0.05);
});

it('still reads a highlight that is clipped', () => {
  const clipped = surely({ alpha: 0.05, colorAt: dark, camera: { blurPx: 0.9, exposure: 4 } });
  expect(Math.abs(clipped / 0.05 - 1)).toBeLessThan(0.3);
});

it('sees no highlight on a matte stone', () => {
  for (const colorAt of [dark, red]) expect(alphaOf({ alpha: 0.6, colorAt })).toBeNull();
});

it('says nothing untrue of a white matte stone, whose own shading hides the lobe', () => {
  for (const alpha of [0.6, 0.8]) {
    const seen = found({ alpha, colorAt: plain(0.5) });
    const { low, high } = seen ? roughnessEstimate(seen.problem, seen.fit) : { low: 0.002, high: 1 };
    expect(low).toBeLessThan(alpha);
    expect(high).toBeGreaterThan(alpha);
  }
});

it('takes a pale grain of mineral in a dark matte stone for no highlight', () => {
  // Where a highlight would lie, and opposite.
  for (const [u, v] of [
    [-0.12, 0.36],
    [0.4, -0.3],
  ] as const) {
    const speckled = ([x, y]: Vector) => plain(Math.hypot(x - u, y - v) < 0.06 ? 0.4 : 0.05)();
    expect(alphaOf({ alpha: 0.7, colorAt: speckled })).toBeNull();
  }
});

it('takes spots of a saturated color on a matte stone for no highlight', () => {
  for (const spot of [plain(0.7, 0.15, 0.05), plain(0.1, 0.15, 0.6), plain(0.1, 0.5, 0.1)]) {
    const spotted = ([x, y]: Vector) => (Math.hypot(x + 0.12, y - 0.36) < 0.15 ? spot() : dark());
    expect(alphaOf({ alpha: 0.7, colorAt: spotted })).toBeNull();
  }
});

it('sees nothing where there is nothing to see', () => {
  const { stone, mask, light } = drawStone({ alpha: 0.05, colorAt: dark });
  expect(stoneHighlight({ ...stone, data: stone.data.map(() => 0) }, mask, light)).toBeNull();
  expect(stoneHighlight(stone, { ...mask, data: mask.data.map(() => 0) }, light)).toBeNull();
});

it('reads a second image of the lamp, such as on a facet, on its own', () => {
  const { stone, mask, light } = drawStone({ alpha: 0.03, colorAt: () => [0.03, 0.03, 0.03] });
  const [first] = [stoneHighlight(stone, mask, light)!];
  expect(first.further).toBeUndefined();
  const { window } = first.problem;
  const row = Math.round(window.row + first.fit.shape.row * window.stepPx);
  const column = Math.round(window.column + first.fit.shape.column * window.stepPx);
  const [down, right, reach] = [24, 22, 10];
  const data = stone.data.slice();
  for (let r = -reach; r <= reach; r++) {
    for (let c = -reach; c <= reach; c++) {
      const from = 3 * ((row + r) * stone.width + column + c);
      data.set(stone.data.subarray(from, from + 3), from + 3 * (down * stone.width + right));
    }
  }
  const both = stoneHighlight({ ...stone, data }, mask, light)!;
  expect(both.further).toHaveLength(1);
  const [other] = both.further!;
  expect(Math.abs(Math.log(other!.fit.shape.alpha / first.fit.shape.alpha))).toBeLessThan(0.4);
});
