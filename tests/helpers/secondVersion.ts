import type { AnyRecord } from '../../src/journal/upgradeRecords';

/** A batch with one run as the second version of the journal kept them; invented. */
export const SECOND_VERSION: readonly AnyRecord[] = [
  {
    ...{ kind: 'batch', id: '01JNQ5B0000000000000000001', name: 'Quarry finds' },
    ...{ machine: null, startedOn: '2026-04-01', isOver: false },
  },
  {
    ...{ kind: 'run', id: '01JNQ5R0000000000000000001', batch: '01JNQ5B0000000000000000001' },
    ...{ machine: null, step: 'coarse', startedOn: '2026-04-01', endedOn: null, charge: '6 tablespoons' },
  },
];
