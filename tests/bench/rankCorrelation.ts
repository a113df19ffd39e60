/**
 * Spearman's rank correlation; equal values share their mean rank.
 *
 * @param x - Values.
 * @param y - As many.
 * @returns −1 to 1; NaN for fewer than two pairs.
 * @see Spearman 1904, American Journal of Psychology 15(1).
 */
export function rankCorrelation(x: readonly number[], y: readonly number[]): number {
  const a = ranks(x);
  const b = ranks(y);
  const middle = (x.length + 1) / 2;
  let ab = 0;
  let aa = 0;
  let bb = 0;
  a.forEach((rank, i) => {
    ab += (rank - middle) * (b[i]! - middle);
    aa += (rank - middle) ** 2;
    bb += (b[i]! - middle) ** 2;
  });
  return ab / Math.sqrt(aa * bb);
}

function ranks(values: readonly number[]): number[] {
  return values.map((value) => {
    const lower = values.filter((other) => other < value).length;
    const equal = values.filter((other) => other === value).length;
    return lower + (equal + 1) / 2;
  });
}
