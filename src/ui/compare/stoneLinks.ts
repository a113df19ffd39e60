import type { RecordId } from '../../journal/records';

/** Opens a stone's own page. */
export type OpenStone = (batchId: RecordId, stoneId: RecordId) => void;
