import type { CompareBy, CompareWhat } from './compareBy';
import { nameInside } from './compareWords';
import type { Standing } from './standings';

const WORDS: Readonly<Record<CompareWhat, readonly [better: string, worse: string]>> = {
  gloss: ['Higher than', 'Lower than'],
  coarse: ['Sooner than', 'Later than'],
  size: ['Less than', 'More than'],
  finished: ['More often than', 'Less often than'],
};

const MOST_NAMES = 4;

/**
 * Where a group stands against the others, a sentence each for what is better, worse and open.
 *
 * @returns "Higher than jasper and howlite." · "No difference that can be told yet from quartz."; empty without others.
 */
export function standingWords(all: readonly Standing[], by: CompareBy, what: CompareWhat): string[] {
  const names = (is: Standing['is']) =>
    all.filter((one) => one.is === is).map(({ other }) => nameInside(other.name, by));
  const [better, worse] = WORDS[what];
  return [
    [better, names('better')] as const,
    [worse, names('worse')] as const,
    ['No difference that can be told yet from', names('open')] as const,
  ].flatMap(([lead, list]) => (list.length === 0 ? [] : [`${lead} ${listed(list)}.`]));
}

/** Names as one would say them: "jasper, howlite and 3 others". A list of names with commas is parted by semicolons. */
function listed(names: readonly string[]): string {
  const shown = names.length > MOST_NAMES + 1 ? names.slice(0, MOST_NAMES) : names;
  const more = names.length - shown.length;
  const all = more > 0 ? [...shown, `${more} others`] : shown;
  const last = all.at(-1) ?? '';
  if (all.length === 1) return last;
  const hasCommas = shown.some((name) => name.includes(','));
  return `${all.slice(0, -1).join(hasCommas ? '; ' : ', ')}${hasCommas ? '; and ' : ' and '}${last}`;
}
