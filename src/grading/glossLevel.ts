/** Published gloss levels from flat to high gloss. */
export const GLOSS_LEVELS = ['G1', 'G2', 'G3', 'G4', 'G5', 'G6', 'G7'] as const;

export type GlossLevel = (typeof GLOSS_LEVELS)[number];

/**
 * Published gloss level of a pair of readings.
 *
 * | level | traditional name | 60° | 85° |
 * |---|---|---|---|
 * | G1 | matte, flat | at most 5 | at most 10 |
 * | G2 | velvet | at most 10 | 10 to 35 |
 * | G3 | eggshell | 10 to 25 | 10 to 35 |
 * | G4 | satin | 20 to 35 | 35 and more |
 * | G5 | semi-gloss | 35 to 70 | |
 * | G6 | gloss | 70 to 85 | |
 * | G7 | high gloss | above 85 | |
 *
 * The 60° reading decides; where the table leaves two levels open (up to 5, and 20 to 25) the 85° reading does. Stones
 * between levels, such as 30 at 60° and 25 at 85°, go by the 60° reading. A level holds its lower end.
 *
 * @param gu60 - Gloss units at 60°, 0 or more.
 * @param gu85 - Gloss units at 85°, 0 or more.
 * @throws RangeError if a reading is negative or not a number.
 * @see MPI gloss and sheen levels; made for paints, and used for stones only to name a range of readings.
 */
export function glossLevel(gu60: number, gu85: number): GlossLevel {
  if (!(gu60 >= 0 && gu85 >= 0)) {
    throw new RangeError(`Gloss readings must be 0 or more, not ${gu60} and ${gu85}.`);
  }
  if (gu60 >= 85) return 'G7';
  if (gu60 >= 70) return 'G6';
  if (gu60 >= 35) return 'G5';
  if (gu60 >= 25) return 'G4';
  if (gu60 >= 20) return gu85 >= 35 ? 'G4' : 'G3';
  if (gu60 >= 10) return 'G3';
  return gu60 > 5 || gu85 > 10 ? 'G2' : 'G1';
}
