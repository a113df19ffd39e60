/**
 * Share of a standard normal distribution above z.
 *
 * @param z - Any number; both tails come out right to ten digits, so that small odds may be compared.
 * @see Abramowitz & Stegun 1964, 26.2.11 (power series, near the middle) and 26.2.14 (continued fraction, in the tails).
 */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  const density = Math.exp(-(z * z) / 2) / Math.sqrt(2 * Math.PI);
  return z < 3 ? 0.5 - density * oddSeries(z) : density / tailFraction(z);
}

function oddSeries(z: number): number {
  let [term, sum] = [z, z];
  for (let odd = 3; term > 1e-17 * sum; odd += 2) {
    term *= (z * z) / odd;
    sum += term;
  }
  return sum;
}

function tailFraction(z: number): number {
  let fraction = z;
  for (let level = 100; level >= 1; level--) fraction = z + level / fraction;
  return fraction;
}
