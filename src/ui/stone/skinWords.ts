import type { StoneGrade } from '../../grading/gradeStone';
import type { MeasuredSkin } from '../../grading/measuredStone';

/**
 * What the lamp's image says of waves and dull patches, in words.
 *
 * @param skin - Null where no highlight was fitted.
 * @returns A sentence each; none where the image does not tell, or shows no patch.
 */
export function skinWords(skin: MeasuredSkin | null): string[] {
  if (!skin) return [];
  return [wavesSentence(skin.waviness), patchesSentence(skin.dullPatches)].filter((words) => words !== null);
}

/**
 * What further images of the lamp say about how evenly the stone is polished.
 *
 * @param further - Empty when the lamp is seen once.
 * @returns A sentence, or null without a further image.
 */
export function furtherWords(further: StoneGrade['furtherGloss']): string | null {
  if (further.length === 0) return null;
  const round = (value: number) => value.toFixed(value < 10 ? 1 : 0);
  const said = further.map(
    ({ gu60, gu60Low, gu60High }) => `${round(gu60)} gloss units (${round(gu60Low)} to ${round(gu60High)})`,
  );
  const read = `The lamp is mirrored elsewhere on this stone too, there with ${said.join(' and ')}`;
  return further.some(({ differs }) => differs)
    ? `Unevenly polished. ${read}.`
    : `${read}: as even as can be told.`;
}

function wavesSentence(waviness: MeasuredSkin['waviness']): string | null {
  if (!waviness) return null;
  const { slopeDeg, slopeLowDeg, slopeHighDeg, wavelengthMm, longestMm } = waviness;
  if (slopeDeg === null || wavelengthMm === null) {
    return `No waviness seen, in waves of up to ${longestMm.toFixed(1)} mm.`;
  }
  const [slope, low, high] = [slopeDeg, slopeLowDeg, slopeHighDeg].map((value) => value.toFixed(1));
  return `Waviness, apart from the gloss: slopes of ${slope}° (${low} to ${high}) in waves about ${wavelengthMm.toFixed(1)} mm long, as orange peel has.`;
}

function patchesSentence(patches: MeasuredSkin['dullPatches']): string | null {
  if (patches.length === 0) return null;
  const total = patches.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  const area = total < 0.095 ? total.toFixed(2) : total.toFixed(1);
  return patches.length === 1
    ? `A dull patch of ${area} mm² inside the mirrored lamp: a pit, frosting or an undercut grain.`
    : `${patches.length} dull patches inside the mirrored lamp, together ${area} mm²: pits, frosting or undercut grains.`;
}
