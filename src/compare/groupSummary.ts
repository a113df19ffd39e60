import type { CompareWhat } from './compareBy';
import type { StoneGroup } from './groupStones';
import { leaving, timeUntil } from './leaving';
import { medianRanks } from './medianRanks';
import { quantileOf } from './quantileOf';
import type { Stay } from './stay';
import { areaLoss, type StoneFigure, stoneFigure } from './stoneFigure';
import { wilsonInterval } from './wilsonInterval';

/** With fewer stones than this nothing is claimed: our rule. */
export const FEWEST_TO_CLAIM = 5;

type Ends = readonly [low: number | null, high: number | null];

/** What is known of a group of stones. */
export interface GroupSummary {
  readonly key: string;
  readonly name: string;
  /** Every stone that adds a figure, from the least value to the greatest. */
  readonly figures: readonly StoneFigure[];
  readonly known: number;
  /** Still in coarse, or still under way. */
  readonly waiting: number;
  /** Set aside. */
  readonly givenUp: number;
  /** How many batches the stones come from; of finished stones those whose end is known. */
  readonly batches: number;
  /** True when too few stones carry the figure to claim anything; the following are null then. */
  readonly isFew: boolean;
  /** Median of gloss, weeks or length lost, or the share that finished; null also when fewer than half left coarse. */
  readonly middle: number | null;
  /** Between them lie half of the stones; an end is null when too few left coarse for it. Null for shares. */
  readonly half: Ends | null;
  /** Holds the true `middle` in 95 % of cases; an upper end of null is open. Null for a median of fewer than six. */
  readonly sure: Ends | null;
  /** Beside the median: of gloss in gloss units at 60°, or of the share of area lost; else null. */
  readonly beside: number | null;
}

/** Sums up a group; null when none of its stones adds a figure. */
export function groupSummary(group: StoneGroup, what: CompareWhat): GroupSummary | null {
  const figures: StoneFigure[] = [];
  const batches = new Set<string>();
  const counts = { known: 0, waiting: 0, 'given up': 0 };
  for (const stone of group.stones) {
    const figure = stoneFigure(stone, what);
    if (figure === null) continue;
    figures.push(figure);
    if (what !== 'finished' || figure.state !== 'waiting') batches.add(stone.batch);
    counts[figure.state]++;
  }
  if (figures.length === 0) return null;
  figures.sort((a, b) => a.value - b.value);
  const basis = what === 'finished' ? counts.known + counts['given up'] : counts.known;
  const isFew = basis < FEWEST_TO_CLAIM;
  return {
    key: group.key,
    name: group.name,
    figures,
    known: counts.known,
    waiting: counts.waiting,
    givenUp: counts['given up'],
    batches: batches.size,
    isFew,
    ...(isFew ? NOTHING : claimed(figures, what)),
  };
}

type Claims = Pick<GroupSummary, 'middle' | 'half' | 'sure' | 'beside'>;

const NOTHING: Claims = { middle: null, half: null, sure: null, beside: null };

function claimed(figures: readonly StoneFigure[], what: CompareWhat): Claims {
  if (what === 'coarse') return claimedOfStays(figures);
  if (what === 'finished') return claimedOfShare(figures);
  const values = figures.map(({ value }) => value);
  const beside = figures.map(({ stone }) => (what === 'gloss' ? stone.gloss?.gu60 : areaLoss(stone)) ?? 0);
  const ranks = medianRanks(values.length);
  return {
    middle: quantileOf(values, 0.5),
    half: [quantileOf(values, 0.25), quantileOf(values, 0.75)],
    sure: ranks && [values[ranks[0] - 1] ?? null, values[ranks[1] - 1] ?? null],
    beside: quantileOf(
      beside.sort((a, b) => a - b),
      0.5,
    ),
  };
}

/** The waiting ones may leave at once or never: the interval's ends take each the worse. */
function claimedOfStays(figures: readonly StoneFigure[]): Claims {
  const steps = leaving(figures.map(stayOf));
  const ranks = medianRanks(figures.length);
  const soonest = figures.map(({ value, state }) =>
    state === 'given up' ? Number.POSITIVE_INFINITY : value,
  );
  const latest = figures.map(({ value, state }) => (state === 'known' ? value : Number.POSITIVE_INFINITY));
  const at = (values: number[], rank: number) => finite(values.sort((a, b) => a - b)[rank - 1]);
  return {
    middle: timeUntil(steps, 0.5),
    half: [timeUntil(steps, 0.25), timeUntil(steps, 0.75)],
    sure: ranks && [at(soonest, ranks[0]), at(latest, ranks[1])],
    beside: null,
  };
}

/** A figure of weeks in coarse as a stay. */
export function stayOf({ value, state }: StoneFigure): Stay {
  return { time: value, end: state === 'known' ? 'left' : state };
}

const finite = (value: number | undefined) => (value !== undefined && Number.isFinite(value) ? value : null);

function claimedOfShare(figures: readonly StoneFigure[]): Claims {
  const decided = figures.filter(({ state }) => state !== 'waiting');
  const finished = decided.filter(({ state }) => state === 'known').length;
  return { ...NOTHING, middle: finished / decided.length, sure: wilsonInterval(finished, decided.length) };
}
