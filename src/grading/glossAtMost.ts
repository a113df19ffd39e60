import { glossUnits } from '../optics/glossUnits';
import type { MaterialName } from './materials';
import type { MeasuredBound } from './measuredStone';
import { refractiveIndex } from './refractiveIndex';

/**
 * Most gloss that a stone without a readable highlight can have.
 *
 * @param bound - Least roughness for one refractive index or more.
 * @param material - Null when nothing was said about the stone.
 * @returns 60° gloss units: the highest over the material's range of indices.
 */
export function glossAtMost({ byIndex }: MeasuredBound, material: MaterialName | null): number {
  const { low, n, high } = refractiveIndex(material);
  return Math.max(...[low, n, high].map((index) => glossUnits(leastAt(byIndex, index), index, 60)));
}

/** The bound at the next lower index is the lower one, so the safe one. */
function leastAt(byIndex: MeasuredBound['byIndex'], index: number): number {
  const below = byIndex.findLast(({ n }) => n <= index) ?? byIndex[0];
  return below?.alphaAtLeast ?? 0;
}
