/**
 * Length of a thin mark: the longest way through it.
 *
 * @param places - Row-major places of one connected mark.
 * @param width - Places in a row.
 * @returns Length in places, and the way itself from end to end.
 */
export function markLength(places: readonly number[], width: number): { length: number; way: number[] } {
  const inside = new Set(places);
  const first = farthest(inside, places[0]!, width);
  const second = farthest(inside, first.place, width);
  const way = [second.place];
  while (way[way.length - 1] !== first.place) way.push(second.ways.get(way[way.length - 1]!)!.before);
  return { length: second.length + 1, way };
}

interface Way {
  readonly length: number;
  readonly before: number;
}

/** The place farthest from a start, and the shortest ways to all places; label-correcting search, eight neighbors. */
function farthest(inside: ReadonlySet<number>, start: number, width: number) {
  const ways = new Map<number, Way>([[start, { length: 0, before: start }]]);
  const waiting = [start];
  for (let k = 0; k < waiting.length; k++) {
    const here = waiting[k]!;
    const { length } = ways.get(here)!;
    const column = here % width;
    for (let down = -1; down <= 1; down++) {
      for (let right = -1; right <= 1; right++) {
        const there = here + down * width + right;
        const isBeyond = column + right < 0 || column + right >= width;
        if (isBeyond || !inside.has(there)) continue;
        const own = length + Math.hypot(down, right);
        if (own < (ways.get(there)?.length ?? Number.POSITIVE_INFINITY) - 1e-9) {
          ways.set(there, { length: own, before: here });
          waiting.push(there);
        }
      }
    }
  }
  let place = start;
  for (const [at, { length }] of ways) if (length > ways.get(place)!.length) place = at;
  return { place, length: ways.get(place)!.length, ways };
}
