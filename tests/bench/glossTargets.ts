import type { GlossRow } from './glossRow';
import { badlyOffUnwarned, glossRanks, glossScores, readable, scored } from './glossScores';
import type { Verdict } from './realVerdict';

/** Targets on clean photos; |ln(estimate / truth)|, shares and 60° gloss units. */
const CLEAN_TARGETS = {
  median: 0.05,
  at90: 0.2,
  noAnswer: 0.05,
  coverage: [0.85, 0.97],
  ranks: 0.99,
  gu: [3, 8],
} as const;
/** Targets on perturbed copies, all of them together. */
const PERTURBED_TARGETS = { median: 0.1, coverage: 0.8, badlyOff: 0 };

export const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/** Every target on clean photos and what came of it. */
export function cleanVerdicts(rows: readonly GlossRow[]): Verdict[] {
  const scores = glossScores(scored(rows));
  const ranks = glossRanks(readable(rows));
  const { median, at90, noAnswer, coverage, ranks: leastRanks, gu } = CLEAN_TARGETS;
  const [least, most] = coverage;
  const gloss = (
    name: string,
    { median: middle, at90: high }: { median: number; at90: number },
  ): Verdict[] => [
    verdict(`60° gloss error, ${name}, median`, `${middle.toFixed(2)} GU`, `≤ ${gu[0]} GU`, middle <= gu[0]),
    verdict(`60° gloss error, ${name}, 90th`, `${high.toFixed(2)} GU`, `≤ ${gu[1]} GU`, high <= gu[1]),
  ];
  return [
    atMost('|ln(estimate/truth)|, median', scores.medianError, median),
    atMost('|ln(estimate/truth)|, 90th percentile', scores.error90, at90),
    verdict(
      'stones without a number',
      `${scores.stones - scores.withNumber} of ${scores.stones}, ${percent(scores.noAnswerShare)}${boundText(rows)}`,
      `≤ ${percent(noAnswer)}`,
      scores.noAnswerShare <= noAnswer,
    ),
    verdict(
      '90 % intervals that hold the truth',
      percent(scores.coverage),
      `${percent(least)} to ${percent(most)}`,
      scores.coverage >= least && scores.coverage <= most,
    ),
    verdict(
      'Spearman, all α, stones without a number put last',
      `${ranks.putLast.toFixed(4)} (left out: ${ranks.leftOut.toFixed(4)})`,
      `≥ ${leastRanks}`,
      ranks.putLast >= leastRanks,
    ),
    ...gloss('material known', scores.gu60),
    ...gloss('material unknown', scores.gu60Unknown),
  ];
}

/** Every target on perturbed copies and what came of it. */
export function perturbedVerdicts(rows: readonly GlossRow[]): Verdict[] {
  const scores = glossScores(scored(rows));
  const bad = badlyOffUnwarned(readable(rows));
  const { median, coverage, badlyOff } = PERTURBED_TARGETS;
  return [
    atMost('|ln(estimate/truth)|, median', scores.medianError, median),
    verdict(
      '90 % intervals that hold the truth',
      percent(scores.coverage),
      `≥ ${percent(coverage)}`,
      scores.coverage >= coverage,
    ),
    verdict(
      'off by more than a factor of 2 without a warning, all α',
      `${bad.length} of ${readable(rows).filter(({ reading }) => reading).length}`,
      `${badlyOff}`,
      rows.length > 0 && bad.length <= badlyOff,
    ),
  ];
}

/** How many stones of any roughness got a bound in place of a number, and how many bounds are true. */
function boundText(rows: readonly GlossRow[]): string {
  const bounded = readable(rows).filter(({ reading, alphaAtLeast }) => !reading && alphaAtLeast);
  if (bounded.length === 0) return '';
  const held = bounded.filter(({ alpha, alphaAtLeast }) => alpha >= alphaAtLeast!).length;
  return ` (all α: ${bounded.length} "at least" in place of a number, ${held} of them true)`;
}

export function verdict(what: string, measured: string, target: string, met: boolean): Verdict {
  return { what, measured, target, met };
}

function atMost(what: string, measured: number, most: number): Verdict {
  return verdict(what, measured.toFixed(3), `≤ ${most}`, measured <= most);
}
