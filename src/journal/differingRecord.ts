import type { RecordId } from './records';

/** A record that was to be added, but is not what the journal keeps under the same id; nothing was added. */
export class DifferingRecord extends Error {
  readonly id: RecordId;

  constructor(id: RecordId) {
    super(`The journal keeps another record under the id ${id}.`);
    this.name = 'DifferingRecord';
    this.id = id;
  }
}
