import { expect, it } from 'vitest';
import type { SceneShadow } from '../../src/analysis/report';
import { shadowTurn } from '../../src/analysis/shadowTurn';
import { inventedRig, inventedScene } from '../helpers/inventedRig';

const kept = inventedRig();
const before = inventedScene().shadow!;
const turnOf = (part: Partial<SceneShadow>, rig = kept) =>
  shadowTurn({ ...inventedScene(), shadow: { ...before, ...part } }, rig);

it('tells a turn by more than 10°, the short way around', () => {
  expect(turnOf({})).toEqual({ turnDeg: 0, isTurned: false });
  expect(turnOf({ turnDeg: -112 })).toEqual({ turnDeg: 8, isTurned: false });
  expect(turnOf({ turnDeg: -132 })).toEqual({ turnDeg: 12, isTurned: true });
  const across = { ...kept, scene: { ...inventedScene(), shadow: { ...before, turnDeg: 176 } } };
  expect(turnOf({ turnDeg: -176 }, across)).toEqual({ turnDeg: 8, isTurned: false });
});

// The lamp is 30° off the axis, 400 mm away at least: 200 mm beside the tray; 50 mm beside it are 14.3°.
it('allows for stones that lie elsewhere in the light of a near lamp', () => {
  expect(turnOf({ turnDeg: -140, at: [600, 1400] })?.isTurned).toBe(false);
  expect(turnOf({ turnDeg: -146, at: [600, 1400] })?.isTurned).toBe(true);
});

it('says nothing of shadows that are not clear, missing, or under a lamp beside the camera', () => {
  expect(turnOf({ turnDeg: 0, likeness: 0.2 })).toBeNull();
  expect(shadowTurn({ ...inventedScene(), shadow: null }, kept)).toBeNull();
  const { scene: _, ...old } = kept;
  expect(turnOf({}, old)).toBeNull();
  const overhead = { ...kept, light: { direction: [0.05, 0, 0.99875] as const, angularDiameterDeg: 11 } };
  expect(turnOf({ turnDeg: 0 }, overhead)).toBeNull();
});
