import { STEPS } from '../grading/steps';
import type { StoneDigest } from '../history/batchDigest';
import { capitalized } from '../texts/capitalized';
import { texts } from '../texts/speech';
import type { CompareBy } from './compareBy';

/** Stones that have something in common. */
export interface StoneGroup {
  /** The same for the same group, whatever other stones there are. */
  readonly key: string;
  /** What it is called, in the language spoken when it was made; empty for stones of which nothing was said. */
  readonly name: string;
  readonly stones: readonly StoneDigest[];
}

/**
 * Stones put together by material, source, batch or the steps they were seen to come out of.
 *
 * Sources are the owner's words, so capital letters and spaces do not part them; the first spelling met is the name.
 *
 * @param stones - In any order.
 * @param batchNames - Names of batches; a batch without one is called by its day of the first check.
 * @returns Groups in the order they were met.
 */
export function groupStones(
  stones: readonly StoneDigest[],
  by: CompareBy,
  batchNames: ReadonlyMap<string, string>,
): StoneGroup[] {
  const groups = new Map<string, { key: string; name: string; stones: StoneDigest[] }>();
  for (const stone of stones) {
    const key = keyOf(stone, by);
    const group = groups.get(key);
    if (group) group.stones.push(stone);
    else groups.set(key, { key, name: nameOf(stone, by, batchNames), stones: [stone] });
  }
  return [...groups.values()];
}

function keyOf(stone: StoneDigest, by: CompareBy): string {
  switch (by) {
    case 'material':
      return stone.material ?? '';
    case 'source':
      return plain(stone.source).toLowerCase();
    case 'batch':
      return stone.batch;
    case 'recipe':
      return STEPS.filter((step) => stone.steps.includes(step)).join(' ');
  }
}

function nameOf(stone: StoneDigest, by: CompareBy, batchNames: ReadonlyMap<string, string>): string {
  const words = texts().verdicts;
  switch (by) {
    case 'material':
      return stone.material === null ? '' : capitalized(words.materials[stone.material]);
    case 'source':
      return plain(stone.source);
    case 'batch':
      return batchNames.get(stone.batch) ?? texts().compare.batchSince(stone.firstDay);
    case 'recipe':
      return STEPS.filter((step) => stone.steps.includes(step))
        .map((step, place) => (place === 0 ? words.steps[step] : words.stepsWithin[step]))
        .join(', ');
  }
}

const plain = (source: string) => source.trim().replace(/\s+/g, ' ');
