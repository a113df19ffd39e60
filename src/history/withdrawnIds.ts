import type { RecordId, WithdrawalRecord } from '../journal/records';
import { currentRecords } from './currentRecords';

/** Things that were taken out of all lists and not back in since. */
export function withdrawnIds(withdrawals: readonly WithdrawalRecord[]): ReadonlySet<RecordId> {
  // They come in the order of their ids, so that the newest for a thing is the last to say.
  const newest = new Map(currentRecords(withdrawals).map(({ of, isWithdrawn }) => [of, isWithdrawn]));
  return new Set([...newest].flatMap(([of, isWithdrawn]) => (isWithdrawn ? [of] : [])));
}
