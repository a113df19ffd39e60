import type { HighlightProfile } from './highlightProfile';

/** One place on a highlight. */
export interface RingPlace {
  /** Distance from the center, lamp radii. */
  readonly distance: number;
  /** Shares of a perfect polish. */
  readonly measured: number;
  readonly model: number;
}

const RINGS = 24;

/** Means over rings of equal width from the center outward; rings without a place are left out. */
export function ringMeans(places: readonly RingPlace[]): HighlightProfile {
  const farthest = places.reduce((most, { distance }) => Math.max(most, distance), 1);
  const rings = Array.from({ length: RINGS }, () => ({ count: 0, distance: 0, measured: 0, model: 0 }));
  for (const { distance, measured, model } of places) {
    const ring = rings[Math.min(RINGS - 1, Math.floor((RINGS * distance) / farthest))]!;
    ring.count++;
    ring.distance += distance;
    ring.measured += measured;
    ring.model += model;
  }
  const filled = rings.filter((ring) => ring.count > 0);
  return {
    distance: filled.map((ring) => ring.distance / ring.count),
    measured: filled.map((ring) => ring.measured / ring.count),
    model: filled.map((ring) => ring.model / ring.count),
  };
}
