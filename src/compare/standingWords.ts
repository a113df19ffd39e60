import { texts } from '../texts/speech';
import type { CompareBy, CompareWhat } from './compareBy';
import { nameInside } from './compareWords';
import type { Standing } from './standings';

const MOST_NAMES = 4;

/**
 * Where a group stands against the others, a sentence each for what is better, worse and open.
 *
 * @returns "Higher than jasper and howlite." · "No difference that can be told yet from quartz."; empty without others.
 */
export function standingWords(all: readonly Standing[], by: CompareBy, what: CompareWhat): string[] {
  const { better, worse, undecided } = texts().compare;
  const sentence = (is: Standing['is'], say: (names: string) => string) => {
    const names = all.filter((one) => one.is === is).map(({ other }) => nameInside(other.name, by));
    return names.length === 0 ? [] : [say(listed(names))];
  };
  return [
    ...sentence('better', better[what]),
    ...sentence('worse', worse[what]),
    ...sentence('open', undecided),
  ];
}

/** Names as one would say them: "jasper, howlite and 3 others". A list of names with commas is parted by semicolons. */
function listed(names: readonly string[]): string {
  const { others, andLast } = texts().compare;
  const shown = names.length > MOST_NAMES + 1 ? names.slice(0, MOST_NAMES) : names;
  const more = names.length - shown.length;
  const all = more > 0 ? [...shown, others(more)] : shown;
  const last = all.at(-1) ?? '';
  if (all.length === 1) return last;
  const hasCommas = shown.some((name) => name.includes(','));
  return andLast(all.slice(0, -1).join(hasCommas ? '; ' : ', '), last, hasCommas);
}
