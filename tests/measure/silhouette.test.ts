import { expect, it } from 'vitest';
import { SILHOUETTE_DIRECTIONS, silhouette, silhouettesApart } from '../../src/measure/silhouette';

/** A lumpy shape around a place, turned, and seen from behind if wished. */
function shape(turn: number, scale: number, isMirrored = false): [number, number][] {
  return Array.from({ length: 240 }, (_, k) => {
    const angle = (2 * Math.PI * k) / 240;
    const radius =
      scale * (1 + 0.2 * Math.cos(2 * angle) + 0.1 * Math.sin(3 * angle) + 0.05 * Math.cos(5 * angle));
    const at = (isMirrored ? -angle : angle) + turn;
    return [300 + radius * Math.sin(at), 200 + radius * Math.cos(at)];
  });
}

it('gives a circle the radius 1 in every direction', () => {
  const circle = Array.from({ length: 180 }, (_, k): [number, number] => [
    50 + 20 * Math.sin(k * (Math.PI / 90)),
    70 + 20 * Math.cos(k * (Math.PI / 90)),
  ]);
  const radii = silhouette(circle);
  expect(radii).toHaveLength(SILHOUETTE_DIRECTIONS);
  for (const radius of radii) expect(radius).toBeCloseTo(1, 3);
});

// An ellipse of semi-axes a, b has the area π a b: its radii over √(a b) run from √(b / a) to √(a / b).
it('reads the axes of an ellipse', () => {
  const ellipse = Array.from({ length: 720 }, (_, k): [number, number] => [
    30 * Math.sin(k * (Math.PI / 360)),
    60 * Math.cos(k * (Math.PI / 360)),
  ]);
  const radii = silhouette(ellipse);
  expect(Math.max(...radii)).toBeCloseTo(Math.SQRT2, 2);
  expect(Math.min(...radii)).toBeCloseTo(Math.SQRT1_2, 2);
});

it('knows a shape again at any size, turned and seen from behind', () => {
  const first = silhouette(shape(0, 60));
  for (const turn of [0.4, 1.9, 3.3, 5.1]) {
    expect(silhouettesApart(first, silhouette(shape(turn, 41)))).toBeLessThan(0.016);
    expect(silhouettesApart(first, silhouette(shape(turn, 41, true)))).toBeLessThan(0.016);
  }
});

it('tells another shape apart, whichever of the two is turned', () => {
  const other = silhouette(
    Array.from({ length: 240 }, (_, k): [number, number] => {
      const angle = (2 * Math.PI * k) / 240;
      const radius = 50 * (1 + 0.2 * Math.cos(2 * angle) - 0.1 * Math.sin(4 * angle));
      return [radius * Math.sin(angle), radius * Math.cos(angle)];
    }),
  );
  const one = silhouette(shape(0.3, 50));
  expect(silhouettesApart(one, other)).toBeGreaterThan(0.05);
  expect(silhouettesApart(other, one)).toBeCloseTo(silhouettesApart(one, other), 9);
});
