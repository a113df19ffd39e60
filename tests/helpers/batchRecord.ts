import type { BatchRecord } from '../../src/journal/records';

/** A batch of a name; a correction when it names what it corrects. */
export function batchRecord(id: string, name: string, corrects?: string): BatchRecord {
  const first = {
    kind: 'batch',
    id,
    name,
    machine: null,
    startedOn: '2026-03-02',
    materials: [],
    source: '',
    isOver: false,
  } as const;
  return corrects === undefined ? first : { ...first, corrects };
}
