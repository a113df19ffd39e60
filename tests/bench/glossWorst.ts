import type { GlossRow } from './glossRow';
import { logError, readable } from './glossScores';

/** The stones with the largest |ln(estimate / truth)|, the worst first. */
export function worstStones(rows: readonly GlossRow[], count: number): GlossRow[] {
  const size = (row: GlossRow) => Math.abs(logError(row)!);
  return readable(rows)
    .filter(({ reading }) => reading)
    .sort((a, b) => size(b) - size(a))
    .slice(0, count);
}

/** Stones that were found and show the lamp, but got no number, the glossiest first. */
export function unanswered(rows: readonly GlossRow[]): GlossRow[] {
  return readable(rows)
    .filter(({ reading }) => !reading)
    .sort((a, b) => a.alpha - b.alpha);
}

/** One stone on one line. */
export function stoneText(row: GlossRow): string {
  const {
    scene,
    variant,
    stone,
    material,
    form,
    alpha,
    n,
    reading,
    alphaAtLeast,
    warnings,
    pitsInHighlight,
  } = row;
  const estimate = reading
    ? `→ ${reading.alpha.toFixed(4)} [${reading.alphaLow.toFixed(4)}, ${reading.alphaHigh.toFixed(4)}] ×${(reading.alpha / alpha).toFixed(2)}`
    : `→ no number${alphaAtLeast ? `, at least ${alphaAtLeast.toFixed(3)}` : ''}`;
  const parts = [
    `${scene} ${variant} stone ${stone}`.padEnd(34),
    `α ${alpha.toFixed(4)} ${estimate}`.padEnd(46),
    `${material}, ${form}, n ${n.toFixed(2)}${pitsInHighlight > 0 ? `, ${pitsInHighlight} pits in highlight` : ''}`,
    `at ${row.row.toFixed(0)}, ${row.column.toFixed(0)}`,
    warnings.length > 0 ? `(${warnings.join(', ')})` : '',
  ];
  return `  ${parts.join('  ').trimEnd()}`;
}
