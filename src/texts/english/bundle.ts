/** How a number or a length misses what it must keep to. */
type Bound = 'at least' | 'more than' | 'at most' | 'less than';

const it = (where: string | null) => where ?? 'it';

/** Taking journals out and in, tables and calendars. */
export const bundle = {
  /** Why a bundle is not taken in, or not written, and what to do. */
  refusals: {
    unreadable: 'The file could not be read: copy it to this device and open it from there.',
    'not-a-zip': 'This is not a journal bundle: choose a .zip file that Glintgrade has exported.',
    damaged: 'The bundle is damaged: copy it again from where it came from, or export it again.',
    locked:
      'The bundle is locked with a password or packed in an unusual way: unpack it, and choose the bundle as it was exported.',
    'too-large': 'The bundle is larger than can be held at once: export fewer batches at a time.',
    'bad-name':
      'The bundle holds a file under a name that no export gives: do not trust it, and export the journal again.',
    'no-journal':
      'There is no journal.json in this zip: choose a bundle as Glintgrade has exported it, not one that was packed anew.',
    'broken-json': 'The journal.json of this bundle cannot be read: export the journal again.',
    'other-format':
      'The journal.json of this zip is not a Glintgrade journal: choose a bundle that Glintgrade has exported.',
    newer: 'This bundle was written by a newer Glintgrade: update this one, then open the bundle again.',
    'bad-record':
      'A record does not hold what it must, so nothing was taken in. If a newer Glintgrade wrote it, update this one; otherwise export the journal again.',
    'differing-records':
      'Two different records of this bundle have the same id, so one of them was altered: export the journal again.',
    'differing-from-kept':
      'A record of this bundle is not what this journal keeps under the same id, so one of the two was altered, and nothing was taken in: export the journal again where the bundle came from.',
    'bad-photo':
      'A picture of this bundle is not what it must be, so nothing was taken in: export the journal again.',
    unwritable: 'Something in this journal does not hold what it must, so nothing was written.',
  },
  /** Which part of a bundle a refusal is about. */
  parts: {
    quoted: (name: string) => `“${name}”`,
    about: (name: string) => `It is about ${name}.`,
    name: (name: string) => `The name is ${name}.`,
    id: (id: string) => `The id is ${id}.`,
    unpaired: (key: string) => `Of ${key} there is not both photo and thumbnail.`,
    misnamed: (name: string) => `${name} is not named by 64 hexadecimal digits.`,
    noJpeg: (name: string) => `${name} is no JPEG.`,
    listCutShort: 'Its list of files is cut short.',
    listBroken: 'Its list of files is broken.',
    lacking: (version: number) => `It was written as version ${version}, and lacks what that version held.`,
    /** Kind and id as they are quoted; null where they are not known. */
    record: (number: number, kind: string | null, id: string | null) =>
      `Record ${number}${kind === null ? '' : `, ${kind}`}${id === null ? '' : ` ${id}`}`,
    noObject: (record: string) => `${record}: it is no object.`,
    unmet: (record: string, unmet: string) => `${record}: ${unmet}.`,
  },
  /** What a field does not meet, as the rest of a sentence; the place is null for the record itself. */
  unmet: {
    missing: (where: string | null, kind: string) => `${it(where)} must be there, as ${kind}`,
    otherKind: (where: string | null, kind: string) => `${it(where)} must be ${kind}`,
    bound: (where: string | null, bound: Bound, limit: string, of: 'letters' | 'entries' | null) =>
      `${it(where)} must be ${bound} ${limit}${of === null ? '' : ` ${of} long`}`,
    noDay: (where: string | null) => `${it(where)} must be a day that exists, YYYY-MM-DD`,
    illWritten: (where: string | null) => `${it(where)} is not written as it must be`,
    unknownFields: (where: string | null, names: string) =>
      `${it(where)} has a field that is not known, ${names}`,
    noneOf: (where: string | null, values: string) => `${it(where)} must be one of ${values}`,
    unknownKind: (where: string | null) => `${it(where)} is of no kind that is known`,
    other: (where: string | null) => `${it(where)} is not what it must be`,
  },
  /** An event in a calendar. */
  calendar: {
    title: (batch: string) => `Check ${batch}`,
    note: (step: string, days: number) =>
      `${step}, usually ${days} days. Rinse and dry the stones before you photograph them.`,
  },
} as const;
