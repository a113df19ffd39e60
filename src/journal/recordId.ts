import { monotonicFactory } from 'ulid';
import type { RecordId } from './records';

const next = monotonicFactory();

/** A new id, later in order than every one made before it on this device, even within one millisecond. */
export const recordId = (): RecordId => next();
