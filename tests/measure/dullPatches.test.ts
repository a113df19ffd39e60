import { expect, it } from 'vitest';
import { dullPatches } from '../../src/measure/dullPatches';
import { highlightFit } from '../../src/measure/highlightFit';
import { EVEN_CURVATURE } from '../../src/measure/highlightModel';
import { stoneSkin } from '../../src/measure/stoneSkin';
import { type DrawnLobe, drawLobe } from '../helpers/drawLobe';
import { drawWaves } from '../helpers/drawWaves';

/** Where drawLobe puts the lobe's center: 0.3 px right of and 0.2 px above the window's. */
const CENTER = { row: 20 - 0.2, column: 20 + 0.3 };
const sound: DrawnLobe = { alpha: 0.01, radiusPx: 10, body: () => 0.08, noise: 0.002 };
/** A disc that mirrors so little of the lamp. */
const patchAt =
  (right: number, up: number, radius: number, left = 0) =>
  (x: number, y: number) =>
    Math.hypot(x - right, y - up) < radius ? left : 1;

function fitted(drawn: DrawnLobe) {
  const problem = drawLobe(drawn);
  const start = { row: 20, column: 20, mean: problem.prior.curvatureMean, stretch: 0, skew: 0 };
  const effort = { rounds: 3, iterations: 14, unevenCurvature: true };
  const fit = highlightFit(problem, { ...start, alpha: drawn.alpha, change: EVEN_CURVATURE }, effort);
  return { problem, fit };
}

function read(drawn: DrawnLobe) {
  const { problem, fit } = fitted(drawn);
  return dullPatches(problem, fit);
}

it('finds a hole in the image, with its place and size', () => {
  const [hole, ...others] = read({ ...sound, polish: patchAt(3, -2, 3) });
  expect(others).toEqual([]);
  expect(Math.abs(hole!.row - (CENTER.row + 2))).toBeLessThan(0.6);
  expect(Math.abs(hole!.column - (CENTER.column + 3))).toBeLessThan(0.6);
  expect(Math.abs(hole!.areaPx / (Math.PI * 9) - 1)).toBeLessThan(0.3);
  expect(hole!.share).toBeLessThan(0.1);
});

it('finds frosting that mirrors a little, and says how much', () => {
  const [patch] = read({ ...sound, polish: patchAt(-2, 1, 3.5, 0.18) });
  expect(Math.abs(patch!.share - 0.18)).toBeLessThan(0.06);
});

it('finds two holes, the larger first', () => {
  const [one, other] = [patchAt(4, 2, 2.8), patchAt(-4, -2, 2)];
  const found = read({ ...sound, polish: (x, y) => one(x, y) * other(x, y) });
  expect(found.length).toBe(2);
  expect(found[0]!.areaPx).toBeGreaterThan(found[1]!.areaPx);
  expect(found[0]!.column).toBeGreaterThan(found[1]!.column);
});

it('finds nothing in an even image, sharp or wide, however it is stretched', () => {
  for (const alpha of [0.01, 0.05, 0.15]) expect(read({ ...sound, alpha })).toEqual([]);
  expect(read({ ...sound, evenness: 0.45, turnDeg: 65 })).toEqual([]);
});

it('does not take dark pattern for a hole: the mirror lies over it', () => {
  const body = (x: number, y: number) => (Math.hypot(x, y) < 0.15 ? 0.02 : 0.35);
  expect(read({ ...sound, body })).toEqual([]);
});

it('does not take waves that leave the image whole for holes', () => {
  for (const seed of [1, 2, 3, 4]) {
    expect(read({ ...sound, skin: drawWaves({ slope: 0.005, wavelengthPx: 12, seed }) })).toEqual([]);
  }
});

it('does not count what lies outside the image', () => {
  expect(read({ ...sound, polish: patchAt(17, 0, 3) })).toEqual([]);
});

it('says the same of a photo of another exposure', () => {
  const [here] = read({ ...sound, polish: patchAt(3, -2, 3) });
  const [darker] = read({ ...sound, polish: patchAt(3, -2, 3), exposure: 0.4, noise: 0.001 });
  expect(darker!.areaPx).toBe(here!.areaPx);
  expect(Math.abs(darker!.share - here!.share)).toBeLessThan(0.03);
});

it('counts the area in pixels of the photo when the window is coarser', () => {
  const { problem, fit } = fitted({ ...sound, polish: patchAt(3, -2, 3) });
  const [fine] = dullPatches(problem, fit);
  const coarse = { ...problem, window: { ...problem.window, stepPx: 2, row: 10, column: 30 } };
  const [same] = dullPatches(coarse, fit);
  expect(same!.areaPx).toBe(4 * fine!.areaPx);
  expect([same!.row, same!.column]).toEqual([10 + 2 * fine!.row, 30 + 2 * fine!.column]);
});

it('finds nothing where no pixel may be used', () => {
  const { problem, fit } = fitted(sound);
  const use = new Uint8Array(problem.window.use.length);
  expect(dullPatches({ ...problem, window: { ...problem.window, use } }, fit)).toEqual([]);
});

it('lets a hole stand in the way of waviness, which it bends the outline like', () => {
  expect(stoneSkin(fitted({ ...sound, polish: patchAt(3, -2, 3) })).waviness).toBeNull();
  const even = stoneSkin(fitted(sound));
  expect([even.dullPatches.length, even.waviness?.slope]).toEqual([0, null]);
});
