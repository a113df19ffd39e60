import { expect, it } from 'vitest';
import { bodyReflectance } from '../../src/measure/bodyReflectance';
import { type StoneHighlight, stoneHighlight } from '../../src/measure/stoneHighlight';
import { plain } from '../helpers/drawScene';
import { drawStone } from '../helpers/drawStone';

function measured(alpha: number, red: number, green = red, blue = red) {
  const { stone, mask, light } = drawStone({ alpha, colorAt: plain(red, green, blue) });
  const found = stoneHighlight(stone, mask, light) as StoneHighlight;
  return { reflectance: bodyReflectance(stone, found.problem.window, found.fit, light)!, light };
}

// The stones are drawn as Lambert surfaces of known reflectance, with light from all around besides the lamp's.
it.each([
  [0.02, 0.05],
  [0.02, 0.3],
  [0.08, 0.12],
  [0.15, 0.3],
])('reads the reflectance a stone was drawn with, at roughness %f and reflectance %f', (alpha, drawn) => {
  const { reflectance } = measured(alpha, drawn);
  expect(reflectance).toBeGreaterThan(0.8 * drawn);
  expect(reflectance).toBeLessThan(1.35 * drawn);
});

it('is the luminance of a colored stone', () => {
  // IEC 61966-2-1 weights: 0.2126 · 0.4 + 0.7152 · 0.1 + 0.0722 · 0.05.
  const luminance = 0.2126 * 0.4 + 0.7152 * 0.1 + 0.0722 * 0.05;
  const { reflectance } = measured(0.05, 0.4, 0.1, 0.05);
  expect(reflectance).toBeGreaterThan(0.8 * luminance);
  expect(reflectance).toBeLessThan(1.35 * luminance);
});

it('is null when nearly the whole window is at the limit of the camera', () => {
  const { stone, mask, light } = drawStone({ alpha: 0.08, colorAt: plain(0.3) });
  const { problem, fit } = stoneHighlight(stone, mask, light)!;
  const clipped = { ...problem.window, use: problem.window.use.map((_, i) => (i < 5 ? 1 : 2)) };
  expect(bodyReflectance(stone, clipped, fit, light)).toBeNull();
});

it('does not depend on the exposure', () => {
  const { stone, mask, light } = drawStone({ alpha: 0.05, colorAt: plain(0.2) });
  const { problem, fit } = stoneHighlight(stone, mask, light)!;
  const once = bodyReflectance(stone, problem.window, fit, light)!;
  const darker = { ...stone, data: stone.data.map((value) => value / 2) };
  const again = bodyReflectance(
    darker,
    problem.window,
    { ...fit, amplitude: fit.amplitude / 2 },
    { ...light, lampRadiance: light.lampRadiance / 2 },
  );
  expect(again).toBeCloseTo(once, 6);
});
