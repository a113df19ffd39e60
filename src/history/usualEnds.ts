import type { MaterialName } from '../grading/materials';
import type { BatchDigest } from './batchDigest';
import { LEAST_FOR_USUAL_END, type UsualEnd } from './verdictNow';

/** Where finished stones of each material ended, for materials with enough of them. */
export function usualEnds(batches: readonly BatchDigest[]): Map<MaterialName, UsualEnd> {
  const readings = new Map<MaterialName, number[]>();
  for (const { stones } of batches) {
    for (const { material, gloss, action } of stones) {
      if (material === null || gloss === null || action !== 'finished') continue;
      readings.set(material, [...(readings.get(material) ?? []), gloss.gu60]);
    }
  }
  return new Map(
    [...readings]
      .filter(([, all]) => all.length >= LEAST_FOR_USUAL_END)
      .map(([material, all]) => {
        const sorted = all.sort((a, b) => a - b);
        const lowerQuartileGu60 = sorted[Math.floor((sorted.length - 1) / 4)]!;
        return [material, { lowerQuartileGu60, stones: sorted.length }];
      }),
  );
}

/** Where stones of a material end; null for an unknown one, and with too few. */
export function usualEndOf(
  ends: ReadonlyMap<MaterialName, UsualEnd>,
  material: MaterialName | null,
): UsualEnd | null {
  return material === null ? null : (ends.get(material) ?? null);
}
