/** "Stone 3" for numbers, the owner's own words as they are. */
export function stoneTitle(name: string): string {
  return /^\d+$/.test(name) ? `Stone ${name}` : name;
}
