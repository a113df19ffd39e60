import { seenName } from '../../texts/seenName';
import { texts } from '../../texts/speech';

/** "Stone 3" for numbers, the owner's own words as they are where anything of them can be seen. */
export function stoneTitle(name: string): string {
  return /^\d+$/.test(name) ? texts().verdicts.stone(name) : seenName(name);
}
