import type { PixelPoint } from '../../analysis/report';

interface Placed {
  readonly id: number;
  readonly center: PixelPoint;
}

const WAYS: Readonly<Record<string, PixelPoint>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/**
 * The stone a key leads to from the present one: by arrow to the nearest in that direction, by Home and End to
 * the first and last number.
 *
 * @param key - Name of the key as the browser gives it.
 * @returns Number of the stone, or null when the key leads nowhere.
 */
export function neighborStone(stones: readonly Placed[], from: number | null, key: string): number | null {
  if (key === 'Home') return stones[0]?.id ?? null;
  if (key === 'End') return stones.at(-1)?.id ?? null;
  const way = WAYS[key];
  const start = stones.find(({ id }) => id === from);
  if (way === undefined || start === undefined) return null;
  let [best, bestCost]: [number | null, number] = [null, Number.POSITIVE_INFINITY];
  for (const { id, center } of stones) {
    const [dRow, dColumn] = [center[0] - start.center[0], center[1] - start.center[1]];
    const ahead = dRow * way[0] + dColumn * way[1];
    const aside = Math.abs(dRow * way[1] - dColumn * way[0]);
    const cost = ahead + 2 * aside;
    if (ahead > 0 && aside <= 2 * ahead && cost < bestCost) [best, bestCost] = [id, cost];
  }
  return best;
}
