import type { Mask } from '../image/raster';

/**
 * Area of a mask over the area of its convex hull: how far from bays and necks it is.
 *
 * @param mask - One piece or several; pixels are taken as unit squares.
 * @returns 0 to 1; 1 for a convex shape and for an empty mask.
 * @see Andrew 1979, Information Processing Letters 9(5), for the hull.
 */
export function solidity(mask: Mask): number {
  const corners: [x: number, y: number][] = [];
  let area = 0;
  for (let row = 0; row < mask.height; row++) {
    const line = mask.data.subarray(row * mask.width, (row + 1) * mask.width);
    const first = line.indexOf(1);
    if (first < 0) continue;
    const end = line.lastIndexOf(1) + 1;
    for (const inside of line) area += inside;
    corners.push([first, row], [first, row + 1], [end, row], [end, row + 1]);
  }
  return area === 0 ? 1 : area / hullArea(corners);
}

function hullArea(corners: [x: number, y: number][]): number {
  corners.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const hull = [...halfHull(corners).slice(0, -1), ...halfHull([...corners].reverse()).slice(0, -1)];
  const twice = hull.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = hull[(i + 1) % hull.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  return Math.abs(twice) / 2;
}

function halfHull(corners: readonly [x: number, y: number][]): [x: number, y: number][] {
  const chain: [x: number, y: number][] = [];
  for (const [x, y] of corners) {
    for (;;) {
      const b = chain[chain.length - 1];
      const a = chain[chain.length - 2];
      if (!a || !b || (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]) > 0) break;
      chain.pop();
    }
    chain.push([x, y]);
  }
  return chain;
}
