import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkByScene } from '../../src/analysis/checkByScene';
import type { RigScene } from '../../src/analysis/report';
import { inventedRig, inventedScene } from '../helpers/inventedRig';

const kept = inventedScene();
const rig = { ...inventedRig(), scene: kept };
const check = (part: Partial<RigScene>) => checkByScene({ ...kept, ballAt: null, ...part }, rig);
const changesOf = (part: Partial<RigScene>) => check(part).changes;

/** The tray under light multiplied by a factor for each place and channel. */
const trayTimes = (factor: (place: number, channel: number) => number): RigScene['tray'] =>
  kept.tray.map(
    (light, i) => light.map((value, c) => value * factor(i, c)) as unknown as RigScene['tray'][number],
  );

it('finds nothing changed in the same scene', () => {
  expect(check({})).toMatchObject({
    byBall: false,
    changes: [],
    shadowTurnDeg: 0,
    trayTilt: 0,
    exposureRatio: 1,
  });
});

it('law: another exposure alone is told by its ratio and never taken for a moved lamp', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.26, max: 3.9, noNaN: true }), (ratio) => {
      const found = check({ tray: trayTimes(() => ratio) });
      expect(found.exposureRatio).toBeCloseTo(ratio, 9);
      expect(found.changes).toEqual(Math.abs(Math.log(ratio)) > 0.08 ? ['exposure-changed'] : []);
    }),
  );
});

// A lamp at height h and distance r lights the tray by h / r³ (inverse square, times the cosine).
it('tells a lamp moved sideways by how its light falls off', () => {
  const light = (lampX: number, i: number) =>
    600 / Math.hypot(600, lampX - 180 * ((i % 3) - 1) * 0.35, 100) ** 3;
  const moved = (mm: number) => trayTimes((i) => light(300 + mm, i) / light(300, i));
  expect(changesOf({ tray: moved(10) })).not.toContain('lamp-moved');
  expect(changesOf({ tray: moved(-300) })).toContain('lamp-moved');
});

it('tells a photo of another size or lens', () => {
  expect(changesOf({ widthPx: 1500 })).toEqual(['camera-moved']);
  expect(changesOf({ focalLength35Mm: 80 })).toEqual(['camera-moved']);
  expect(changesOf({ focalLength35Mm: null })).toEqual([]);
});

it('takes another light for no exposure when the file says how much light was let in', () => {
  const stated = (tray: number, exposure: number) => ({
    own: { ...kept, ballAt: null, tray: trayTimes(() => tray), exposure },
    rig: { ...rig, scene: { ...kept, exposure: 0.02 } },
  });
  const changed = ({ own, rig: before }: ReturnType<typeof stated>) => checkByScene(own, before).changes;
  expect(changed(stated(0.5, 0.01))).toEqual(['exposure-changed']);
  expect(changed(stated(1, 0.02))).toEqual([]);
  expect(changed(stated(1.22, 0.02))).toEqual(['tray-changed']);
  expect(changed(stated(1, 0.01))).toEqual(['tray-changed']);
});

it('tells lost focus', () => {
  expect(changesOf({ edgeBlurPx: 0.75 })).toEqual([]);
  expect(changesOf({ edgeBlurPx: 1.3 })).toEqual(['focus-lost']);
  expect(changesOf({ edgeBlurPx: null })).toEqual([]);
});

it('says that a tray of another color, a black one or an overexposed one tells no exposure', () => {
  for (const tray of [
    trayTimes((_, c) => (c === 0 ? 1.2 : 1)),
    trayTimes(() => 0.1),
    trayTimes(() => 0.001),
    trayTimes(() => 5),
  ]) {
    expect(check({ tray })).toMatchObject({ changes: ['tray-changed'], exposureRatio: null });
  }
});
