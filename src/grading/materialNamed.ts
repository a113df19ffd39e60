import { MATERIAL_NAMES, type MaterialName } from './materials';

/**
 * The material a person means by a name.
 *
 * @param name - Any spelling with capitals, spaces, hyphens or apostrophes: "Tigers-Eye" is tiger's eye.
 * @returns The name as the table has it; null when there is none like it.
 */
export function materialNamed(name: string): MaterialName | null {
  const wanted = bare(name);
  return MATERIAL_NAMES.find((known) => bare(known) === wanted) ?? null;
}

function bare(name: string): string {
  return name.toLowerCase().replace(/[^a-z]/g, '');
}
