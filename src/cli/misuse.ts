/** A command line that cannot be followed; `message` is one sentence for the person. */
export class Misuse extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = 'Misuse';
  }
}
