import { expect, it } from 'vitest';
import { sideUp } from '../../src/identity/sideUp';
import { SILHOUETTE_DIRECTIONS } from '../../src/measure/silhouette';

/** A shape that is not its own mirror image. */
const lopsided = Array.from({ length: SILHOUETTE_DIRECTIONS }, (_, k) => {
  const angle = (2 * Math.PI * k) / SILHOUETTE_DIRECTIONS;
  return 1 + 0.1 * Math.cos(2 * angle) + 0.06 * Math.sin(3 * angle + 0.7) + 0.04 * Math.cos(5 * angle + 2);
});
const turned = (shape: readonly number[], by: number) => [...shape.slice(by), ...shape.slice(0, by)];

it('knows the same side, however it is turned', () => {
  for (const by of [0, 7, 31, 60]) expect(sideUp(lopsided, turned(lopsided, by))).toBe('same');
});

it('knows the other side by its mirrored silhouette', () => {
  for (const by of [0, 7, 31, 60]) expect(sideUp(lopsided, turned(lopsided.toReversed(), by))).toBe('other');
});

it('does not guess for a shape that is its own mirror image', () => {
  const oval = lopsided.map((_, k) => 1 + 0.2 * Math.cos((4 * Math.PI * k) / SILHOUETTE_DIRECTIONS));
  expect(sideUp(oval, turned(oval, 11))).toBe('unknown');
});

it('says the same whichever photo comes first', () => {
  const other = turned(lopsided.toReversed(), 20).map((radius, k) => radius + 0.02 * Math.sin(k));
  expect(sideUp(other, lopsided)).toBe(sideUp(lopsided, other));
});
