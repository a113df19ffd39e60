/** Every reason for which a bundle is not taken in, or not written, with the sentence that says what to do. */
const SENTENCES = {
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
  'bad-photo':
    'A picture of this bundle is not what it must be, so nothing was taken in: export the journal again.',
  unwritable: 'Something in this journal does not hold what it must, so nothing was written.',
} as const;

export type BundleErrorCode = keyof typeof SENTENCES;

/** Longest that is told of what a stranger's file says. */
const MOST_LETTERS = 300;

/** A bundle that cannot be read or written; `message` is shown to the person as it is. */
export class BundleError extends Error {
  readonly code: BundleErrorCode;
  /** Which part it is about; empty when the code says all. */
  readonly detail: string;
  /**
   * @param detail - Which part it is about, as a sentence of its own; left out when the code says all.
   */
  constructor(code: BundleErrorCode, detail?: string) {
    const cut = detail && detail.length > MOST_LETTERS ? `${detail.slice(0, MOST_LETTERS)}…` : detail;
    super(cut ? `${SENTENCES[code]} ${cut}` : SENTENCES[code]);
    this.name = 'BundleError';
    this.code = code;
    this.detail = cut ?? '';
  }
}

/** A name out of a file, fit to be shown: short, and without letters that cannot be seen. */
export function shown(name: string): string {
  const plain = name.replace(/[\p{C}\p{Z}]/gu, ' ');
  return `“${plain.length > 80 ? `${plain.slice(0, 80)}…` : plain}”`;
}
