import { decodeTime, isValid, monotonicFactory } from 'ulid';
import type { RecordId } from './records';

const next = monotonicFactory();

/** A new id, later in order than every one made before it on this device, even within one millisecond. */
export const recordId = (): RecordId => next();

/** When an id was made, ms since 1970; of an id of another form, 0. */
export const madeAt = (id: RecordId): number => (isValid(id) ? decodeTime(id) : 0);

/**
 * Makes every id from now on later in order than one that is there already, such as of a device whose clock goes ahead:
 * the newest record of a thing counts, so what is said now must be newer.
 */
export function goOnAfter(id: RecordId): void {
  if (isValid(id)) next(decodeTime(id) + 1);
}
