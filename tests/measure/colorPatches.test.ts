import { expect, it } from 'vitest';
import { colorPatches } from '../../src/measure/colorPatches';

type Color = readonly [number, number, number];
const RED: Color = [0.5, 0.1, 0.1];
const GREEN: Color = [0.1, 0.4, 0.1];

/** Samples of a color under an even light, with white light of the lamp on top. */
function samples(colors: readonly Color[], mirrored: (i: number) => number = () => 0) {
  const light = Float64Array.from(colors.flatMap((color, i) => color.map((part) => part + mirrored(i))));
  return { light, body: new Float64Array(colors.length).fill(1) };
}

const halves = (a: Color, b: Color) => Array.from({ length: 40 }, (_, i) => (i < 20 ? a : b));

it('tells red from green', () => {
  const { light, body } = samples(halves(RED, GREEN));
  const patches = colorPatches(light, body);
  expect(new Set(patches.slice(0, 20)).size).toBe(1);
  expect(new Set(patches.slice(20)).size).toBe(1);
  expect(patches[0]).not.toBe(patches[39]);
});

it('law: the lamp mirrored in the middle of it changes no patch', () => {
  const colors = halves(RED, GREEN);
  const bare = samples(colors);
  const glossy = samples(colors, (i) => 0.8 * Math.exp(-(((i - 10) / 4) ** 2)));
  expect(colorPatches(glossy.light, glossy.body)).toEqual(colorPatches(bare.light, bare.body));
});

it('leaves a stone of one color, and one of grays, in one piece', () => {
  const one = samples(halves(RED, RED));
  expect(new Set(colorPatches(one.light, one.body))).toEqual(new Set([0]));
  const gray = samples(halves([0.1, 0.1, 0.1], [0.5, 0.5, 0.5]));
  expect(new Set(colorPatches(gray.light, gray.body))).toEqual(new Set([0]));
});

it('makes no patch of a few samples', () => {
  const { light, body } = samples([...halves(RED, RED), GREEN, GREEN]);
  expect(new Set(colorPatches(light, body))).toEqual(new Set([0]));
});

it('puts samples on which no light falls into the first patch', () => {
  const { light, body } = samples(halves(RED, GREEN));
  body[39] = 0;
  expect(colorPatches(light, body)[39]).toBe(0);
});
