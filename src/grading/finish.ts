/** Names of finishes from dull to brilliant, in the words of the trade. */
export const FINISHES = ['matte', 'satin', 'semi-gloss', 'gloss', 'mirror'] as const;

export type Finish = (typeof FINISHES)[number];

/**
 * Lowest reading of each finish, gloss units at 60°.
 * Source: MPI gloss and sheen levels: flat and velvet up to 10, eggshell and satin 10 to 35,
 * semi-gloss 35 to 70, gloss 70 to 85, high gloss above 85. `glossLevel` names the level itself.
 */
export const FINISH_FROM_GU60: Readonly<Record<Finish, number>> = {
  matte: 0,
  satin: 10,
  'semi-gloss': 35,
  gloss: 70,
  mirror: 85,
};

/**
 * Name of the finish that a gloss reading stands for.
 *
 * @param gu60 - Gloss units at 60°, 0 or more.
 * @returns The finish whose range holds the reading; a range holds its lower end.
 * @throws RangeError if gu60 is negative or not a number.
 * @see `FINISH_FROM_GU60`.
 */
export function finishOf(gu60: number): Finish {
  if (!(gu60 >= 0)) throw new RangeError(`A gloss reading must be 0 or more, not ${gu60}.`);
  return FINISHES.findLast((finish) => gu60 >= FINISH_FROM_GU60[finish]) ?? 'matte';
}
