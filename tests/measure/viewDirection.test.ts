import { expect, it } from 'vitest';
import { inViewFrame, viewDirection } from '../../src/measure/viewDirection';
import { cross, dot, normalize, type Vector } from '../../src/optics/vector';

const photo = (focalLength35Mm: number | null) => ({ widthPx: 3600, heightPx: 2400, focalLength35Mm });
const degrees = (cosine: number) => (Math.acos(cosine) * 180) / Math.PI;

it('looks straight up from the middle of the picture', () => {
  const [x, y, z] = viewDirection(photo(50), 1200, 1800);
  expect([x, y, z].map((value) => Math.abs(value))).toEqual([0, 0, 1]);
});

it('sees the published fields of view of the 36 × 24 mm frame', () => {
  // Textbook values: a 50 mm lens sees 39.6° across, 27.0° up and 46.8° along the diagonal; a 24 mm lens 73.7° across.
  const [mm50, mm24] = [photo(50), photo(24)];
  expect(2 * degrees(viewDirection(mm50, 1200, 0)[2])).toBeCloseTo(39.6, 1);
  expect(2 * degrees(viewDirection(mm50, 0, 1800)[2])).toBeCloseTo(27.0, 1);
  expect(2 * degrees(viewDirection(mm50, 0, 0)[2])).toBeCloseTo(46.8, 1);
  expect(2 * degrees(viewDirection(mm24, 1200, 0)[2])).toBeCloseTo(73.7, 1);
});

it('points to the middle of the picture from every side: right from the left, down from the top', () => {
  const [left, right] = [viewDirection(photo(50), 1200, 0), viewDirection(photo(50), 1200, 3600)];
  expect(left[0]).toBeGreaterThan(0.3);
  expect(right[0]).toBeCloseTo(-left[0], 12);
  expect(viewDirection(photo(50), 0, 1800)[1]).toBeLessThan(-0.2);
});

it('takes a longer lens than a phone has when the file states none, and says the same for null and nothing', () => {
  const { focalLength35Mm: _, ...unstated } = photo(null);
  expect(viewDirection(unstated, 0, 0)).toEqual(viewDirection(photo(null), 0, 0));
  expect(viewDirection(photo(null), 0, 0)[2]).toBeGreaterThan(viewDirection(photo(50), 0, 0)[2]);
  expect(viewDirection(photo(null), 0, 0)[2]).toBeLessThan(viewDirection(photo(200), 0, 0)[2]);
});

it('turns the view itself onto z, keeps lengths and angles, and x level', () => {
  const view = normalize([0.3, -0.2, 0.9]);
  const a: Vector = [0.1, 0.7, 0.4];
  const b: Vector = [-0.5, 0.2, 0.8];
  const [turnedA, turnedB] = [inViewFrame(a, view), inViewFrame(b, view)];
  expect(inViewFrame(view, view)[2]).toBeCloseTo(1, 12);
  expect(dot(turnedA, turnedB)).toBeCloseTo(dot(a, b), 12);
  expect(dot(cross(turnedA, turnedB), turnedA)).toBeCloseTo(0, 12);
  // Right-handed stays right-handed.
  expect(dot(inViewFrame(cross(a, b), view), cross(turnedA, turnedB))).toBeCloseTo(
    dot(cross(a, b), cross(a, b)),
    12,
  );
  // What is straight up in the picture has no part along the level x.
  expect(inViewFrame([0, 1, 0], view)[0]).toBeCloseTo(0, 12);
});

it('changes nothing when the camera looks straight down', () => {
  expect(inViewFrame([0.3, -0.4, 0.5], [0, 0, 1])).toEqual([0.3, -0.4, 0.5]);
});
