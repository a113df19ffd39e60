/** Keeping a check and telling stones apart. */
export const keep = {
  title: 'Keep this check',
  keep: 'Keep',
  keeping: 'Keeping…',
  again: 'Keep it once more',
  /** Around the name of the batch, which leads to it. */
  kept: {
    before: 'Kept in the journal under ',
    after: '. It stays as it is, whatever you change here.',
    itsBatch: 'its batch',
  },
  keptUndo: (photo: string) => `${photo} is in the journal.`,
  batch: 'Batch',
  newBatch: 'A new batch',
  itsName: 'Its name',
  /** Name of a batch that was given none. */
  batchOf: (day: string) => `Batch of ${day}`,
  otherSide: 'Another side of the stones kept today: both sides add up',
  which: {
    title: 'Which stone is which?',
    later: 'Not now',
    done: 'All right: keep',
    /** `all`: also those that are known are to be looked at. */
    compare: (known: number, count: number, all: boolean) =>
      `${known} of ${count} are known. Compare ${all ? 'them' : 'the others'}, and tap the right one where it is wrong: the two then change places.`,
    place: (place: number) => `Number ${place} is`,
    placeInPhoto: (place: number) => `Stone ${place} of this photo is`,
    known: (name: string) => `stone ${name}`,
    fresh: 'new',
    others: 'Others',
  },
} as const;
