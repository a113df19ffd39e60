/** What takes a while and is under way. */
export const work = {
  cancel: 'Cancel',
  /** Once it was cancelled and has not yet stopped. */
  stopping: 'Stopping…',
  soFar: 'Done so far',
  savingJournal: 'Packing the journal…',
  takingIn: 'Taking the journal in…',
  savingTable: 'Writing the table…',
  savingReminders: 'Putting the reminders together…',
  openingExample: 'Opening the example year…',
  comparing: 'Comparing the stones with those of the batch…',
  /** What became of something that was cancelled. */
  notSaved: 'Cancelled: nothing was saved.',
  notTakenIn: 'Cancelled: nothing was taken in.',
} as const;
