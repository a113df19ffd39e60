import type { GlossRow } from './glossRow';
import { badlyOffUnwarned, glossScores, readable, scored } from './glossScores';
import { groupedBy } from './groupedBy';

type Grouping = readonly [title: string, nameOf: (row: GlossRow) => string];

/** ln 10 / 3 wide: three bins a decade. */
const alphaBin = ({ alpha }: GlossRow) => {
  const edge = (k: number) => Number((10 ** (k / 3)).toPrecision(2));
  const k = Math.floor(3 * Math.log10(alpha) + 1e-9);
  return `α ${edge(k)} to ${edge(k + 1)}`;
};
const bin = (value: number, edges: readonly number[], unit: string) => {
  const above = edges.findIndex((edge) => value < edge);
  if (above === 0) return `below ${edges[0]} ${unit}`;
  if (above < 0) return `${edges.at(-1)} ${unit} and more`;
  return `${edges[above - 1]} to ${edges[above]} ${unit}`;
};

const GROUPINGS: readonly Grouping[] = [
  ['roughness', alphaBin],
  ['lamp size', ({ lampDeg }) => bin(lampDeg, [8, 11, 14, 17, 20], '°')],
  ['lamp shape', ({ lampShape }) => lampShape],
  ['scale', ({ pxPerMm }) => bin(pxPerMm, [8, 11, 16, 24, 40], 'px/mm')],
  ['form', ({ form }) => form],
  ['pattern', ({ pattern }) => pattern],
  ['body', ({ material }) => material],
  ['pits in the highlight', ({ pitsInHighlight }) => (pitsInHighlight > 0 ? 'some' : 'none')],
  ['refractive index', ({ n }) => bin(n, [1.5, 1.56, 1.65], 'index')],
];

const HEAD = 'stones  no number  median  90th   lean    coverage  GU median  GU 90th';

/**
 * Tables of the scores by everything that may matter.
 *
 * @param rows - Readable stones; all roughnesses count in the first table, the scored ones in the others.
 */
export function glossBreakdown(rows: readonly GlossRow[]): string[] {
  return GROUPINGS.flatMap(([title, nameOf]) => {
    const some = title === 'roughness' ? readable(rows) : scored(rows);
    const groups = [...groupedBy(some, nameOf)].sort(([a], [b]) => inOrder(a, b));
    if (groups.length < 2) return [];
    return ['', `By ${title}`.padEnd(28) + HEAD, ...groups.map(([name, group]) => scoreLine(name, group))];
  });
}

/** By the first number in the name, then by letters. */
function inOrder(a: string, b: string): number {
  const first = (name: string) => (name.startsWith('below') ? -1 : Number(/[\d.]+/.exec(name)?.[0] ?? 0));
  return first(a) - first(b) || a.localeCompare(b, 'en');
}

/** One line per variant, all of them beside the clean photos. */
export function variantLines(rows: readonly GlossRow[]): string[] {
  const lines = [...groupedBy(rows, ({ variant }) => variant)].map(([variant, group]) => {
    const bad = badlyOffUnwarned(readable(group)).length;
    return `${scoreLine(variant, scored(group))}  ${bad > 0 ? `${bad} off by ×2 unwarned` : ''}`.trimEnd();
  });
  return ['', 'By variant'.padEnd(28) + HEAD, ...lines];
}

function scoreLine(name: string, rows: readonly GlossRow[]): string {
  const { stones, withNumber, medianError, error90, medianLean, coverage, gu60 } = glossScores(rows);
  const cells = [
    String(stones).padStart(6),
    String(stones - withNumber).padStart(10),
    medianError.toFixed(3).padStart(8),
    error90.toFixed(3).padStart(7),
    medianLean.toFixed(3).padStart(8),
    `${(100 * coverage).toFixed(0)} %`.padStart(9),
    gu60.median.toFixed(1).padStart(10),
    gu60.at90.toFixed(1).padStart(9),
  ];
  return `  ${name.padEnd(26)}${cells.join('').replace(/NaN( %)?/g, (text) => '–'.padStart(text.length))}`;
}
