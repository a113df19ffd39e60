/** Most patches of one stone. */
const MOST = 5;
/** Patches are added until what is left within them is this share of the whole spread of color. */
const LEFT_WITHIN = 0.08;
/** A stone whose color spreads less than this share of its light is of one color. */
const ONE_COLOR = 0.03;
const ROUNDS = 12;
/** A patch has at least so many samples, or its color is no better known than the light on it. */
const FEWEST = 6;

/**
 * Sorts a stone's samples into patches of like color, so that each patch can be given a reflectance of its own.
 *
 * The lamp's mirrored light is white: it adds the same to all channels and so leaves their differences alone
 * (dichromatic reflection). Samples are told apart by these differences only, over the light that falls on them, and
 * a highlight makes no patch.
 *
 * @param light - Linear light, lamp white = (1, 1, 1), three channels a sample.
 * @param body - Light of a white matte body at each sample, any unit; samples with 0 go to the first patch.
 * @returns Number of each sample's patch, from 0, none left empty.
 * @see Shafer 1985, Color Research and Application 10, for the two kinds of reflected light; MacQueen 1967 for k-means.
 */
export function colorPatches(light: Float64Array, body: Float64Array): Uint8Array {
  const count = body.length;
  const places = Array.from({ length: count }, (_, i) => i).filter((i) => body[i]! > 0);
  const points = places.map((i) => chroma(light, i, body[i]!));
  const patches = new Uint8Array(count);
  const lightness =
    places.reduce((sum, i) => sum + grayOf(light, i) / body[i]!, 0) / Math.max(1, places.length);
  const whole = spreadAround(points, new Uint8Array(points.length), [middleOf(points)]);
  if (points.length < 2 * FEWEST || whole < points.length * (ONE_COLOR * lightness) ** 2) return patches;
  let labels: Uint8Array = new Uint8Array(points.length);
  let middles = [middleOf(points)];
  while (middles.length < MOST && spreadAround(points, labels, middles) > LEFT_WITHIN * whole) {
    const more = gathered(points, [...middles, farthest(points, labels, middles)]);
    if (Math.min(...sizes(more.labels, more.middles.length)) < FEWEST) break;
    ({ labels, middles } = more);
  }
  places.forEach((i, k) => {
    patches[i] = labels[k]!;
  });
  return patches;
}

type Chroma = readonly [number, number];

const grayOf = (light: Float64Array, i: number) =>
  (light[3 * i]! + light[3 * i + 1]! + light[3 * i + 2]!) / 3;

/** Differences of the channels along two directions at right angles to white. */
function chroma(light: Float64Array, i: number, body: number): Chroma {
  const [r, g, b] = [light[3 * i]!, light[3 * i + 1]!, light[3 * i + 2]!];
  return [(r - g) / Math.SQRT2 / body, (r + g - 2 * b) / Math.sqrt(6) / body];
}

function middleOf(points: readonly Chroma[]): Chroma {
  const sum = points.reduce<[number, number]>(([x, y], p) => [x + p[0], y + p[1]], [0, 0]);
  return [sum[0] / Math.max(1, points.length), sum[1] / Math.max(1, points.length)];
}

const squareApart = (a: Chroma, b: Chroma) => (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2;

const spreadAround = (points: readonly Chroma[], labels: Uint8Array, middles: readonly Chroma[]) =>
  points.reduce((sum, point, k) => sum + squareApart(point, middles[labels[k]!]!), 0);

function farthest(points: readonly Chroma[], labels: Uint8Array, middles: readonly Chroma[]): Chroma {
  let most = 0;
  points.forEach((point, k) => {
    const best = points[most]!;
    const apart = squareApart(point, middles[labels[k]!]!);
    if (apart > squareApart(best, middles[labels[most]!]!)) most = k;
  });
  return points[most]!;
}

function gathered(points: readonly Chroma[], starts: readonly Chroma[]) {
  let middles = [...starts];
  let labels = new Uint8Array(points.length);
  for (let round = 0; round < ROUNDS; round++) {
    labels = Uint8Array.from(points, (point) => nearest(point, middles));
    middles = middles.map((middle, m) => {
      const own = points.filter((_, k) => labels[k] === m);
      return own.length > 0 ? middleOf(own) : middle;
    });
  }
  return { labels, middles };
}

function nearest(point: Chroma, middles: readonly Chroma[]): number {
  let best = 0;
  middles.forEach((middle, m) => {
    if (squareApart(point, middle) < squareApart(point, middles[best]!)) best = m;
  });
  return best;
}

function sizes(labels: Uint8Array, count: number): number[] {
  const found = new Array<number>(count).fill(0);
  for (const label of labels) found[label]!++;
  return found;
}
