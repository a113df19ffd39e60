/** The journal was brought up to date by a newer edition of this program; this one leaves it alone. */
export class NewerJournal extends Error {
  constructor() {
    super('The journal is of a newer version than this program knows.');
    this.name = 'NewerJournal';
  }
}
