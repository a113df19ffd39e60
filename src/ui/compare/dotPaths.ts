import type { CompareWhat } from '../../compare/compareBy';
import type { GroupSummary } from '../../compare/groupSummary';
import type { StoneFigure } from '../../compare/stoneFigure';
import { cross, pebble, waitingPebble } from './pebblePaths';
import type { PlotAxis } from './plotAxis';
import { stackDots, threadDots } from './stackDots';

/** Every stone of a group as paths, one for each way of drawing them. */
export interface DotPaths {
  readonly known: string;
  readonly waiting: string;
  readonly givenUp: string;
  /** True where the dots lie so thick that their outlines would hide them. */
  readonly isThick: boolean;
}

/**
 * Paths of a group's dots.
 *
 * @param middle - Height of the line that they lie about, px.
 * @param room - Height they may fill, px.
 */
export function dotPaths(
  group: GroupSummary,
  what: CompareWhat,
  axis: PlotAxis,
  middle: number,
  room: number,
): DotPaths {
  const isShare = what === 'finished';
  const placed = isShare ? placedByShare(group) : group.figures;
  const xs = placed.map(({ value }, k) => axis.x(isShare ? (k + 0.5) / placed.length : value));
  const { offsets, radius, isPressed } = isShare ? threadDots(xs, room) : stackDots(xs, room);
  const paths = { known: [] as string[], waiting: [] as string[], 'given up': [] as string[] };
  placed.forEach(({ state }, k) => {
    const [x, y] = [xs[k] ?? 0, middle + (offsets[k] ?? 0)];
    if (state === 'given up') paths[state].push(cross(x, y, radius));
    else paths[state].push((state === 'known' ? pebble : waitingPebble)(x, y, radius, k));
  });
  return {
    known: paths.known.join(''),
    waiting: paths.waiting.join(''),
    givenUp: paths['given up'].join(''),
    isThick: isPressed,
  };
}

/** Finished stones first, then those set aside, so that they meet at the share that finished. */
function placedByShare({ figures }: GroupSummary): StoneFigure[] {
  return [
    ...figures.filter(({ state }) => state === 'known'),
    ...figures.filter(({ state }) => state === 'given up'),
  ];
}
