import { MATERIAL_NAMES, type MaterialName } from '../../grading/materials';
import { speech } from '../../texts/speech';

/** Every material with its name in the language spoken now, in that language's alphabetical order. */
export function materialChoices(): { readonly material: MaterialName; readonly word: string }[] {
  const { language, texts } = speech();
  const words = texts.verdicts.materials;
  return MATERIAL_NAMES.map((material) => ({ material, word: words[material] })).sort((a, b) =>
    a.word.localeCompare(b.word, language),
  );
}
