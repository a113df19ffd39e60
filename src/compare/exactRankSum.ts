/**
 * Two-sided odds of a rank sum this far from even, among all arrangements of two small samples without ties.
 *
 * The greatest value is one of the m with odds m / (m + n), and then wins against all n of the others:
 * p(u; m, n) = m / (m + n) · p(u − n; m − 1, n) + n / (m + n) · p(u; m, n − 1).
 *
 * @param wins - The smaller count of wins, a whole number from 0 to m · n / 2.
 * @param m - Size of one sample, 1 or more.
 * @param n - Size of the other; time and memory grow with m · n · wins.
 * @returns 0 to 1.
 * @see Mann & Whitney 1947, equation 2.
 */
export function exactRankSum(wins: number, m: number, n: number): number {
  const [few, many] = m < n ? [m, n] : [n, m];
  const certain = Array.from({ length: wins + 1 }, (_, u) => (u === 0 ? 1 : 0));
  // By how many of the smaller sample are placed; one of the larger is added each time around.
  let rows: readonly (readonly number[])[] = Array.from({ length: few + 1 }, () => certain);
  for (let placed = 1; placed <= many; placed++) rows = withOneMore(rows, placed);
  const upTo = (rows[few] ?? []).reduce((sum, odds) => sum + odds, 0);
  return Math.min(1, 2 * upTo);
}

function withOneMore(rows: readonly (readonly number[])[], placed: number): number[][] {
  const next = [[...(rows[0] ?? [])]];
  for (let i = 1; i < rows.length; i++) {
    const odds = i / (i + placed);
    const before = next[i - 1] ?? [];
    next.push((rows[i] ?? []).map((beside, u) => odds * (before[u - placed] ?? 0) + (1 - odds) * beside));
  }
  return next;
}
