import type { Step } from '../grading/steps';
import type { RecordId } from '../journal/records';

/** What is done at a wash-out, in this order. Source: common practice. */
export const WASH_OUT_ITEMS = [
  'slurry',
  'rinse',
  'soap',
  'rinse-again',
  'machine',
  'stones',
  'tools',
  'mud',
  'dry',
] as const;

export type WashOutItem = (typeof WASH_OUT_ITEMS)[number];

/** Minutes that stones and machine run with detergent and water. Source: common practice. */
export const SOAP_MINUTES = { from: 60, to: 120 } as const;

/** Which caution matters at which item. */
export const CAUTION_AT: Readonly<Partial<Record<WashOutItem, 'slurry' | 'dust'>>> = {
  slurry: 'slurry',
  mud: 'dust',
};

/** One wash-out of a batch, as far as it has come. */
export interface WashOut {
  readonly batch: RecordId;
  /** The step that is washed off, and the finer one to come. */
  readonly from: Step;
  readonly to: Step;
  readonly ticked: readonly WashOutItem[];
  /** When the detergent run was started, milliseconds since 1970; null before. */
  readonly soapSinceMs: number | null;
}

export type WashOutEvent =
  | ({ readonly type: 'begin' } & Pick<WashOut, 'batch' | 'from' | 'to'>)
  | { readonly type: 'tick' | 'untick'; readonly item: WashOutItem }
  | { readonly type: 'soap'; readonly atMs: number | null };

/**
 * The wash-out after something happened.
 *
 * Beginning one that is under way already changes nothing, so a page that is opened again keeps its ticks; beginning
 * that of another batch or step drops them. Without one under way ticks are for nothing.
 */
export function washOutAfter(state: WashOut | null, event: WashOutEvent): WashOut | null {
  if (event.type === 'begin') {
    const { batch, from, to } = event;
    const isSame = state !== null && isOf(state, event);
    return isSame ? state : { batch, from, to, ticked: [], soapSinceMs: null };
  }
  if (state === null) return null;
  if (event.type === 'soap') return { ...state, soapSinceMs: event.atMs };
  const isTicked = (item: WashOutItem) =>
    item === event.item ? event.type === 'tick' : state.ticked.includes(item);
  return { ...state, ticked: WASH_OUT_ITEMS.filter(isTicked) };
}

/** Whether it is the wash-out of this batch between these steps. */
export const isOf = (
  { batch, from, to }: Pick<WashOut, 'batch' | 'from' | 'to'>,
  other: Pick<WashOut, 'batch' | 'from' | 'to'>,
): boolean => batch === other.batch && from === other.from && to === other.to;

/** Whether everything is ticked, so that the finer grit may go in. */
export const isWashedOut = ({ ticked }: WashOut): boolean => ticked.length === WASH_OUT_ITEMS.length;

/**
 * How the detergent run stands.
 *
 * @param nowMs - Milliseconds since 1970.
 * @returns `leftMs`: until the shortest usual time is over, 0 when it is; null before the run was started.
 */
export function soapRun(
  { soapSinceMs }: Pick<WashOut, 'soapSinceMs'>,
  nowMs: number,
): { readonly leftMs: number; readonly endsMs: number; readonly latestMs: number } | null {
  if (soapSinceMs === null) return null;
  const endsMs = soapSinceMs + 60_000 * SOAP_MINUTES.from;
  const latestMs = soapSinceMs + 60_000 * SOAP_MINUTES.to;
  return { leftMs: Math.max(0, endsMs - nowMs), endsMs, latestMs };
}
