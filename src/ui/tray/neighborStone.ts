import type { PixelPoint } from '../../analysis/report';

interface Placed {
  readonly id: number;
  readonly center: PixelPoint;
}

/** The nearest stone above (`way` −1) or below (`way` 1), rather straight than near. */
function nextRow(stones: readonly Placed[], start: Placed, way: number): number | null {
  let [best, bestCost]: [number | null, number] = [null, Number.POSITIVE_INFINITY];
  for (const { id, center } of stones) {
    const ahead = way * (center[0] - start.center[0]);
    const aside = Math.abs(center[1] - start.center[1]);
    const cost = ahead + 2 * aside;
    if (ahead > 0 && aside <= 2 * ahead && cost < bestCost) [best, bestCost] = [id, cost];
  }
  return best;
}

/**
 * The stone a key leads to from the present one: left and right go by number, so that no stone is ever out of
 * reach; up and down go to the nearest stone above and below; Home and End to the first and the last.
 *
 * @param key - Name of the key as the browser gives it.
 * @returns Number of the stone, or null when the key leads nowhere.
 */
export function neighborStone(stones: readonly Placed[], from: number | null, key: string): number | null {
  if (key === 'Home') return stones[0]?.id ?? null;
  if (key === 'End') return stones.at(-1)?.id ?? null;
  const place = stones.findIndex(({ id }) => id === from);
  const start = stones[place];
  if (start === undefined) return null;
  if (key === 'ArrowLeft') return stones[place - 1]?.id ?? null;
  if (key === 'ArrowRight') return stones[place + 1]?.id ?? null;
  if (key === 'ArrowUp') return nextRow(stones, start, -1);
  return key === 'ArrowDown' ? nextRow(stones, start, 1) : null;
}
