import * as z from 'zod/mini';
import { RECORDS_VERSION } from '../journal/upgradeRecords';
import { BUNDLE_FORMAT } from './bundleFormat';
import { action, checkRecord, material, materialName, place, step } from './checkSchema';
import { day, photoKey, pixelPoint, recordId } from './fields';
import {
  batchRecord,
  decisionRecord,
  identityRecord,
  journalRecord,
  machineRecord,
  runRecord,
  stoneRecord,
  withdrawalRecord,
} from './recordSchemas';
import { rigRecord } from './rigSchema';

/** What is said in the published schema of the parts that have a name of their own. */
const NAMED = [
  {
    part: recordId,
    id: 'recordId',
    description: 'ULID (github.com/ulid/spec): sortable by time, unique without asking anyone.',
  },
  { part: day, id: 'day', description: 'A day of the calendar where the bench stands (ISO 8601).' },
  {
    part: photoKey,
    id: 'photoKey',
    description:
      'SHA-256 of the original photo file; the bundle holds it reduced, as photos/KEY.jpg and thumbnails/KEY.jpg.',
  },
  {
    part: pixelPoint,
    id: 'pixelPoint',
    description: 'Row and column in pixels of the upright, measured photo, whose longer side is longestPx.',
  },
  { part: place, id: 'place', description: 'Number of a stone in its photo.' },
  { part: step, id: 'step', description: 'Step of tumbling, in order.' },
  { part: materialName, id: 'materialName', description: 'Mineral or trade name.' },
  { part: material, id: 'material', description: 'Null where nothing was said.' },
  { part: action, id: 'action', description: 'What can be done with a stone.' },
  { part: machineRecord, id: 'machine', description: 'A barrel or bowl; capacityKg is its rated load.' },
  {
    part: batchRecord,
    id: 'batch',
    description:
      'Stones that are tumbled together; source says in words where the rough came from; isOver when finished or given up.',
  },
  {
    part: runRecord,
    id: 'run',
    description:
      'One turn of a batch in a machine, from charge to wash-out; charge says in words what went in.',
  },
  {
    part: stoneRecord,
    id: 'stone',
    description: 'A stone of a batch; source says in words where it came from.',
  },
  {
    part: identityRecord,
    id: 'identity',
    description:
      'Which stones the places of a check are; the newest for a check counts. A confidence of null: the owner said so.',
  },
  {
    part: decisionRecord,
    id: 'decision',
    description: 'What the owner did with a stone at a check, beside what was advised; the newest counts.',
  },
  {
    part: withdrawalRecord,
    id: 'withdrawal',
    description:
      'Takes a batch, run, stone or check out of all lists, or back in; the newest for a thing counts.',
  },
  {
    part: checkRecord,
    id: 'check',
    description:
      'One photo of a batch, measured and judged. Sizes are in mm, mm² and cm², gloss in gloss units at 60° (ISO 2813), alpha is GGX roughness; Low and High are the ends of 90 % intervals.',
  },
  {
    part: rigRecord,
    id: 'rig',
    description: 'A remembered lamp and camera; x right, y up, z to the camera.',
  },
] as const;

/**
 * The schema of a bundle's `journal.json`, as it is published in `journal.schema.json`.
 *
 * @see JSON Schema, draft 2020-12.
 */
export function publishedSchema(): object {
  const names = z.registry<{ id?: string; title?: string; description?: string }>();
  for (const { part, id, description } of NAMED) names.add(part, { id, description });
  const journal = z.looseObject({
    format: z.literal(BUNDLE_FORMAT),
    version: z.literal(RECORDS_VERSION),
    records: z.array(journalRecord),
  });
  names.add(journal, {
    title: `Glintgrade journal, version ${RECORDS_VERSION}`,
    description:
      'journal.json of a bundle. Records are never changed: a correction is a new record that names the first one in "corrects". Two journals are merged by taking every record of both.',
  });
  return z.toJSONSchema(journal, { target: 'draft-2020-12', metadata: names });
}
