/** Dots piled on each other. */
export interface StackedDots {
  /** Offset of each dot from the middle line, px, never beyond the room. */
  readonly offsets: readonly number[];
  readonly radius: number;
  /** True where even the smallest dots had to be pressed into each other. */
  readonly isPressed: boolean;
}

/** From the largest dots, px, to the smallest that can still be seen. */
const LEAST_RADIUS = 1.8;
const RADII = [5.5, 4.5, 3.5, 2.5, LEAST_RADIUS] as const;

/**
 * Piles dots of like places on each other, to both sides of a middle line, so that each can be seen: the largest dots
 * whose piles fit.
 *
 * @param xs - Places along the axis, px.
 * @param room - Height of the highest pile, px.
 */
export function stackDots(xs: readonly number[], room: number): StackedDots {
  for (const radius of RADII) {
    const { levels, highest } = piled(xs, radius);
    const apart = 2 * radius + 0.5;
    const fits = highest * apart <= room;
    if (!fits && radius !== LEAST_RADIUS) continue;
    const step = fits ? apart : (room - apart) / Math.max(1, highest - 1);
    const offsets = levels.map((level) => (level % 2 === 1 ? step : -step) * Math.ceil(level / 2) + 0);
    return { offsets, radius, isPressed: !fits };
  }
  return { offsets: [], radius: RADII[0], isPressed: false };
}

/**
 * Lays evenly spaced dots on as many parallel threads as they need.
 *
 * @param xs - Places along the axis, px, evenly spaced.
 * @param room - Height of all threads, px.
 */
export function threadDots(xs: readonly number[], room: number): StackedDots {
  const spacing = xs.length > 1 ? Math.abs((xs[1] ?? 0) - (xs[0] ?? 0)) : Number.POSITIVE_INFINITY;
  const threadsAt = (radius: number) => Math.max(1, Math.ceil((2.4 * radius) / spacing));
  const radius = RADII.find((one) => threadsAt(one) * (2 * one + 0.5) <= room) ?? LEAST_RADIUS;
  const threads = threadsAt(radius);
  const isPressed = threads * (2 * radius + 0.5) > room;
  const step = isPressed ? (room - 2 * radius) / (threads - 1) : 2 * radius + 0.5;
  return { offsets: xs.map((_, k) => ((k % threads) - (threads - 1) / 2) * step), radius, isPressed };
}

/** How many dots lie under each in its column, and the highest column. */
function piled(xs: readonly number[], radius: number) {
  const piles = new Map<number, number>();
  let highest = 0;
  const levels = xs.map((x) => {
    const column = Math.floor(x / (2 * radius + 1));
    const level = piles.get(column) ?? 0;
    piles.set(column, level + 1);
    highest = Math.max(highest, level + 1);
    return level;
  });
  return { levels, highest };
}
