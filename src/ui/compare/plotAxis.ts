import type { CompareWhat } from '../../compare/compareBy';
import type { GroupSummary } from '../../compare/groupSummary';
import { type AxisScale, axisScale, roundMarks } from '../stone/chartScale';

export interface PlotAxis {
  /** Place of a value, CSS pixels from the left edge. */
  readonly x: AxisScale;
  readonly marks: readonly { readonly value: number; readonly label: string }[];
  readonly widthPx: number;
  /** Value of the ceiling, where there is one. */
  readonly ceiling: number | null;
}

/** Room for half a pebble and a mark's number at either end. */
const MARGIN_PX = 16;
const LEAST_END: Readonly<Record<CompareWhat, number>> = { gloss: 1, coarse: 4, size: 0.1, finished: 1 };
/** A phone's width holds so many marks of three digits. */
const MARK_EVERY_PX = 55;

/**
 * An axis that holds every stone.
 *
 * Gloss begins at the even ten percent below the dullest stone, so that what is near the ceiling can be told apart;
 * weeks and shares begin at nothing, loss a little below where a stone was measured larger than before.
 *
 * @param widthPx - Width of the plot.
 */
export function plotAxis(groups: readonly GroupSummary[], what: CompareWhat, widthPx: number): PlotAxis {
  const ends = groups.flatMap(({ figures }) => [figures[0]?.value ?? 0, figures.at(-1)?.value ?? 0]);
  const low = lowEnd(what, Math.min(...ends));
  const high = Math.max(LEAST_END[what], ...ends);
  const scale = what === 'coarse' ? 1 : 100;
  return {
    x: axisScale([low, high], [MARGIN_PX, Math.max(MARGIN_PX + 1, widthPx - MARGIN_PX)]),
    marks: marksBetween(low * scale, high * scale, widthPx).map((mark) => ({
      value: mark / scale,
      label: String(mark),
    })),
    widthPx,
    ceiling: what === 'gloss' ? 1 : null,
  };
}

function lowEnd(what: CompareWhat, least: number): number {
  if (what === 'gloss') return Math.max(0, Math.min(0.8, Math.floor(10 * least - 0.1) / 10));
  return what === 'size' ? Math.min(0, least) : 0;
}

/** Round numbers along the axis. */
function marksBetween(low: number, high: number, widthPx: number): number[] {
  const count = Math.max(2, Math.min(10, Math.floor(widthPx / MARK_EVERY_PX)));
  const step = roundMarks(high - low, count)[1] ?? high - low;
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, k) => Number(((first + k) * step).toFixed(9)) + 0);
}
