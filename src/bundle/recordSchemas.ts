import * as z from 'zod/mini';
import { action, checkRecord, MOST_STONES, material, materialName, place, step } from './checkSchema';
import { day, kept, line, list, positive, recordId, sentences, share } from './fields';
import { rigRecord } from './rigSchema';

/** More than there are materials to choose from. */
const MOST_MATERIALS = 100;

export const machineRecord = z.strictObject({
  ...kept,
  kind: z.literal('machine'),
  name: line,
  type: z.enum(['rotary', 'vibratory']),
  capacityKg: z.nullable(positive),
});

export const batchRecord = z.strictObject({
  ...kept,
  kind: z.literal('batch'),
  name: line,
  machine: z.nullable(recordId),
  startedOn: day,
  materials: list(materialName, MOST_MATERIALS),
  source: line,
  isOver: z.boolean(),
});

export const runRecord = z.strictObject({
  ...kept,
  kind: z.literal('run'),
  batch: recordId,
  machine: z.nullable(recordId),
  step,
  startedOn: day,
  endedOn: z.nullable(day),
  charge: sentences,
});

export const stoneRecord = z.strictObject({
  ...kept,
  kind: z.literal('stone'),
  batch: recordId,
  name: line,
  material,
  source: line,
  isFavorite: z.boolean(),
});

export const identityRecord = z.strictObject({
  ...kept,
  kind: z.literal('identity'),
  batch: recordId,
  check: recordId,
  stones: list(z.strictObject({ place, stone: recordId, confidence: z.nullable(share) }), MOST_STONES),
});

export const decisionRecord = z.strictObject({
  ...kept,
  kind: z.literal('decision'),
  batch: recordId,
  check: recordId,
  stone: recordId,
  action,
});

export const withdrawalRecord = z.strictObject({
  ...kept,
  kind: z.literal('withdrawal'),
  batch: recordId,
  of: recordId,
  isWithdrawn: z.boolean(),
});

/**
 * What a record of a journal may be, by its kind; `tests/bundle/recordSchemas.test.ts` holds it to the types in
 * `journal/records.ts`, both ways.
 *
 * A field that is not known is refused, not left out: the same id means the same record on every device, so a record
 * may not lose a field on its way through an older program.
 */
export const journalRecord = z.discriminatedUnion('kind', [
  machineRecord,
  batchRecord,
  runRecord,
  stoneRecord,
  checkRecord,
  identityRecord,
  decisionRecord,
  withdrawalRecord,
  rigRecord,
]);
