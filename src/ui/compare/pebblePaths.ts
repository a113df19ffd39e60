/** Long and short half axis over the radius, and the turn in degrees: no two neighbors lie alike. */
const SHAPES = [
  [1.12, 0.86, -18],
  [1.05, 0.92, 34],
  [1.16, 0.82, 8],
  [1.02, 0.95, -47],
] as const;

const outlines = new Map<number, readonly string[]>();

/** Pebbles of a radius around a point, as the rest of a path that starts at that point. */
function pebbles(radius: number): readonly string[] {
  const known = outlines.get(radius);
  if (known) return known;
  const made = SHAPES.map(([long, short, turn]) => {
    const [dx, dy] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
    const at = (factor: number) =>
      `${(factor * long * radius * dx).toFixed(1)} ${(factor * long * radius * dy).toFixed(1)}`;
    const arc = `a${(long * radius).toFixed(1)} ${(short * radius).toFixed(1)} ${turn} 1 0 `;
    return `m${at(-1)}${arc}${at(2)}${arc}${at(-2)}z`;
  });
  outlines.set(radius, made);
  return made;
}

const start = (x: number, y: number) => `M${x.toFixed(1)} ${y.toFixed(1)}`;

/** A path of one pebble. @param place - Its place among the stones, which decides on its shape. */
export function pebble(x: number, y: number, radius: number, place: number): string {
  return start(x, y) + pebbles(radius)[place % SHAPES.length];
}

/** A pebble that is on its way: with a tail to the right. */
export function waitingPebble(x: number, y: number, radius: number, place: number): string {
  return `${pebble(x, y, radius, place)}${start(x + radius, y)}h${radius + 2}`;
}

/** A cross, for a stone that was set aside. */
export function cross(x: number, y: number, radius: number): string {
  const side = (1.6 * radius).toFixed(1);
  return `${start(x - 0.8 * radius, y - 0.8 * radius)}l${side} ${side}m0-${side}l-${side} ${side}`;
}
