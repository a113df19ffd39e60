import { expect, it } from 'vitest';
import { checkByBall } from '../../src/analysis/checkByBall';
import type { Rig } from '../../src/analysis/report';
import { combine, normalize, type Vector } from '../../src/optics/vector';
import { inventedRig, inventedScene } from '../helpers/inventedRig';

const kept = inventedRig();
const scene = inventedScene();
const changesOf = (part: Partial<Rig>, now = scene) => checkByBall({ ...kept, ...part }, now, kept).changes;

/** The lamp's direction turned around the camera's axis. */
function turned(degrees: number): Rig['light'] {
  const angle = (degrees * Math.PI) / 180;
  const [x, y, z] = kept.light.direction;
  const direction: Vector = [
    x * Math.cos(angle) - y * Math.sin(angle),
    x * Math.sin(angle) + y * Math.cos(angle),
    z,
  ];
  return { ...kept.light, direction };
}

it('finds nothing changed in the photo that the rig was read from', () => {
  const check = checkByBall(kept, scene, kept);
  expect(check).toMatchObject({ byBall: true, changes: [], scaleRatio: 1, exposureRatio: 1 });
  expect(check.lampOffDeg).toBeCloseTo(0, 4);
});

// The lamp is 30° off the axis: turning by φ moves it by 2·asin(sin 30°·sin(φ/2)).
it('tells a lamp moved by 4° from one moved by 2°, and says by how much', () => {
  const turnFor = (degrees: number) =>
    2 * Math.asin(2 * Math.sin((degrees * Math.PI) / 360)) * (180 / Math.PI);
  expect(changesOf({ light: turned(turnFor(2)) })).toEqual([]);
  const moved = checkByBall({ ...kept, light: turned(turnFor(4)) }, scene, kept);
  expect(moved.changes).toEqual(['lamp-moved']);
  expect(moved.lampOffDeg).toBeCloseTo(4, 3);
});

it('tells a lamp turned around the tray by the shadows, whatever the ball allows', () => {
  const shadow = { ...scene.shadow!, turnDeg: -90 };
  expect(changesOf({}, { ...scene, shadow })).toEqual(['lamp-moved']);
});

it('tells a lamp of another size or distance', () => {
  const sized = (share: number) => ({ ...kept.light, angularDiameterDeg: share * 11 });
  expect(changesOf({ light: sized(1.08) })).toEqual([]);
  expect(changesOf({ light: sized(1.13) })).toEqual(['lamp-moved']);
  expect(changesOf({ light: sized(0.87) })).toEqual(['lamp-moved']);
});

it('allows for the ball lying elsewhere in the light of a near lamp', () => {
  const distanceMm = 600;
  const elsewhere = { ...scene, ballAt: [300, 1500] as const };
  const toLamp = combine([distanceMm, kept.light.direction], [-1, [110, 60, 0]]);
  const angularDiameterDeg = (11 * distanceMm) / Math.hypot(...toLamp);
  const light = { direction: normalize(toLamp), angularDiameterDeg };
  expect(changesOf({ light })).toEqual(['lamp-moved']);
  expect(changesOf({ light }, elsewhere)).toEqual([]);
  // A lamp that went the other way is no parallax.
  const wrong = {
    ...light,
    direction: normalize(combine([distanceMm, kept.light.direction], [1, [110, 60, 0]])),
  };
  expect(changesOf({ light: wrong }, elsewhere)).toEqual(['lamp-moved']);
});

it('tells a camera that came nearer by 3 %, or a photo of another size', () => {
  expect(changesOf({ mmPerPx: 0.0985 })).toEqual([]);
  expect(changesOf({ mmPerPx: 0.097 })).toEqual(['camera-moved']);
  expect(changesOf({}, { ...scene, widthPx: 900, heightPx: 600 })).toEqual(['camera-moved']);
});

it('tells lost focus, but not a sharper photo', () => {
  expect(changesOf({ blurPx: 0.75 })).toEqual([]);
  expect(changesOf({ blurPx: 1.2 })).toEqual(['focus-lost']);
  expect(changesOf({ blurPx: 0.3 })).toEqual([]);
});

it('never takes another exposure for a moved lamp', () => {
  for (const ratio of [0.25, 0.5, 0.8, 1.25, 2, 4])
    expect(changesOf({ lampRadiance: 15 * ratio })).toEqual(['exposure-changed']);
});

it('compares with a rig that was saved without a scene', () => {
  const { scene: _, ...old } = kept;
  expect(checkByBall(kept, scene, old).changes).toEqual([]);
  expect(checkByBall({ ...kept, mmPerPx: 0.12 }, scene, old).changes).toEqual(['camera-moved']);
});
