import { MATERIALS, type Material, type MaterialName } from '../grading/materials';
import { texts } from '../texts/speech';

/** Stones this many Mohs steps apart are not tumbled together. Source: common practice. */
const MOST_APART = 1;

/** The two materials that lie farthest apart. */
export interface Mismatch {
  readonly softer: MaterialName;
  readonly harder: MaterialName;
}

/**
 * Whether stones are too unlike in hardness to share a barrel or bowl: the softer ones are worn away.
 *
 * Where a material has a range of hardness, the nearest ends count, so that nothing is said of what may well fit.
 *
 * @returns Null where all lie within about one Mohs step.
 */
export function hardnessMismatch(materials: readonly MaterialName[]): Mismatch | null {
  const facts = materials.map((name) => ({ name, mohs: (MATERIALS[name] as Material).mohs }));
  const softer = facts.toSorted((a, b) => a.mohs[1] - b.mohs[1])[0];
  const harder = facts.toSorted((a, b) => b.mohs[0] - a.mohs[0])[0];
  if (softer === undefined || harder === undefined) return null;
  return harder.mohs[0] - softer.mohs[1] > MOST_APART ? { softer: softer.name, harder: harder.name } : null;
}

/** What the hazardous ones of these materials need, each sentence once. */
export function hazardsOf(materials: readonly MaterialName[]): string[] {
  const hazards = new Set(materials.flatMap((name) => (MATERIALS[name] as Material).hazard ?? []));
  return [...hazards].map((hazard) => texts().verdicts.hazards[hazard]);
}
