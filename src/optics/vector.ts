/** A direction or place: x right, y up, z to the camera. */
export type Vector = readonly [number, number, number];

export const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The vector at length one. */
export function normalize(v: Vector): Vector {
  const length = Math.sqrt(dot(v, v));
  return [v[0] / length, v[1] / length, v[2] / length];
}

/** Weighted sum of vectors. */
export function combine(...parts: readonly (readonly [number, Vector])[]): Vector {
  const sum: [number, number, number] = [0, 0, 0];
  for (const [weight, v] of parts) for (let i = 0; i < 3; i++) sum[i]! += weight * v[i]!;
  return sum;
}
