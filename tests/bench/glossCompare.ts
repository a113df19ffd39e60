import type { GlossRow } from './glossRow';
import { glossScores, logError, scored } from './glossScores';
import { stoneText } from './glossWorst';

/** A stone got better or worse when |ln(estimate / truth)| changed by more than this. */
const CHANGED = 0.02;
const SHOWN = 10;

/** Stones of two runs that came out differently; each entry holds the row before and after. */
export interface GlossChanges {
  readonly pairs: readonly [before: GlossRow, after: GlossRow][];
  readonly better: readonly [before: GlossRow, after: GlossRow][];
  readonly worse: readonly [before: GlossRow, after: GlossRow][];
  readonly gained: readonly GlossRow[];
  readonly lost: readonly GlossRow[];
}

/** Sets two runs over the same photos side by side; stones that only one of them holds are left out. */
export function glossChanges(before: readonly GlossRow[], after: readonly GlossRow[]): GlossChanges {
  const nameOf = ({ scene, variant, stone }: GlossRow) => `${scene} ${variant} ${stone}`;
  const earlier = new Map(before.map((row) => [nameOf(row), row]));
  const pairs = after.flatMap((row): [GlossRow, GlossRow][] => {
    const old = earlier.get(nameOf(row));
    return old ? [[old, row]] : [];
  });
  const numbered = pairs.filter(([old, now]) => old.reading && now.reading);
  const worsening = ([old, now]: readonly [GlossRow, GlossRow]) =>
    Math.abs(logError(now)!) - Math.abs(logError(old)!);
  const sorted = [...numbered].sort((a, b) => worsening(b) - worsening(a));
  return {
    pairs,
    worse: sorted.filter((pair) => worsening(pair) > CHANGED),
    better: sorted.filter((pair) => worsening(pair) < -CHANGED).reverse(),
    gained: pairs.filter(([old, now]) => !old.reading && now.reading).map(([, now]) => now),
    lost: pairs.filter(([old, now]) => old.reading && !now.reading).map(([old]) => old),
  };
}

/** What got better and what got worse since an earlier run, as lines of text. */
export function changeLines(before: readonly GlossRow[], after: readonly GlossRow[]): string[] {
  const { pairs, better, worse, gained, lost } = glossChanges(before, after);
  const variants = [...new Set(pairs.map(([, now]) => now.variant))];
  const common = (variant: string) => {
    const both = pairs.filter(([, now]) => now.variant === variant);
    const old = glossScores(scored(both.map(([row]) => row)));
    const now = glossScores(scored(both.map(([, row]) => row)));
    const arrow = (key: 'medianError' | 'error90' | 'coverage' | 'noAnswerShare') =>
      `${old[key].toFixed(3)} → ${now[key].toFixed(3)}`;
    return `  ${variant.padEnd(16)} median ${arrow('medianError')}, 90th ${arrow('error90')}, coverage ${arrow('coverage')}, no number ${arrow('noAnswerShare')}`;
  };
  const pairText = ([old, now]: readonly [GlossRow, GlossRow]) =>
    `${stoneText(now)}  was ${old.reading!.alpha.toFixed(4)}`;
  return [
    '',
    `Since the earlier run: ${pairs.length} stones in both, ${better.length} better, ${worse.length} worse, ${gained.length} numbers gained, ${lost.length} lost`,
    ...variants.map(common),
    ...section('Better', better.slice(0, SHOWN).map(pairText)),
    ...section('Worse', worse.slice(0, SHOWN).map(pairText)),
    ...section('Numbers gained', gained.slice(0, SHOWN).map(stoneText)),
    ...section('Numbers lost', lost.slice(0, SHOWN).map(stoneText)),
  ];
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length > 0 ? [title, ...lines] : [];
}
