import { MATERIALS, type MaterialName, UNKNOWN_INDEX } from './materials';

/** A refractive index and the range it may lie in. */
export interface IndexRange {
  readonly n: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Refractive index to grade a stone with.
 *
 * @param material - Null when nothing was said about the stone.
 * @returns The middle of the handbook range and its ends; for an unknown stone 1.54 with 1.45 to 1.70.
 */
export function refractiveIndex(material: MaterialName | null): IndexRange {
  if (material === null) return UNKNOWN_INDEX;
  const [low, high] = MATERIALS[material].n;
  return { n: (low + high) / 2, low, high };
}
