import type { AnyRecord } from '../../src/journal/upgradeRecords';

/** A batch with one check as the first version of the journal kept them; invented. */
export const FIRST_VERSION: readonly AnyRecord[] = [
  {
    ...{ kind: 'batch', id: '01JNQ5B0000000000000000000', name: 'Brook pebbles' },
    ...{ machine: null, startedOn: '2026-03-02', isOver: false },
  },
  {
    ...{ kind: 'check', id: '01JNQ5C0000000000000000000', batch: '01JNQ5B0000000000000000000' },
    ...{ step: 'coarse', day: '2026-03-09', mmPerPx: 0.12, photo: null },
    stones: [
      {
        place: 1,
        outline: [
          [100, 100],
          [100, 300],
          [260, 200],
        ],
        ...{ lengthMm: 31.2, widthMm: 24.1, areaMm2: 570, inspectedCm2: 5.1 },
        flaws: [{ kind: 'pit', row: 150, column: 200, diameterMm: 0.9, confidence: 0.8 }],
        ...{ gloss: null, smoothness: 88, action: 'repeat', reasons: ['One pit too many.'] },
      },
    ],
  },
];
