/** What the command ends with. */
export const EXIT = { graded: 0, broke: 1, misused: 2, refused: 3 } as const;

/** Where the command speaks. */
export interface Voice {
  /** To the standard output. */
  readonly say: (text: string) => void;
  /** To the standard error. */
  readonly complain: (text: string) => void;
}
