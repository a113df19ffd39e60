import type { MaterialName } from '../../grading/materials';
import { hardnessMismatch, hazardsOf } from '../../recipes/hardness';
import { texts } from '../../texts/speech';
import { Field } from '../parts/Field';
import { materialChoices } from '../parts/materialChoices';
import { mismatchWords } from '../plan/planWords';

interface Props {
  readonly materials: readonly MaterialName[];
  readonly onChange: (materials: readonly MaterialName[]) => void;
}

/** What a batch is of, one material after the other, and what to beware of with these. */
export function BatchMaterials({ materials, onChange }: Props) {
  const { start: words, verdicts } = texts();
  const mismatch = hardnessMismatch(materials);
  const warnings = [...hazardsOf(materials), ...(mismatch === null ? [] : [mismatchWords(mismatch)])];
  const add = (name: string) => {
    const added = materialChoices().find(({ material }) => material === name);
    if (added) onChange([...materials, added.material]);
  };
  return (
    <fieldset className="materials">
      <legend className="field-label">{words.stones}</legend>
      <ul className="material-tags">
        {materials.map((material) => (
          <li key={material}>
            {verdicts.materials[material]}
            <button
              type="button"
              className="button button-quiet"
              aria-label={words.drop(verdicts.materials[material])}
              onClick={() => onChange(materials.filter((other) => other !== material))}
            >
              ×
            </button>
          </li>
        ))}
      </ul>
      <Field label={words.addMaterial}>
        {(id) => (
          <select id={id} value="" onChange={({ target }) => add(target.value)}>
            <option value="">{words.choose}</option>
            {materialChoices()
              .filter(({ material }) => !materials.includes(material))
              .map(({ material, word }) => (
                <option key={material} value={material}>
                  {word}
                </option>
              ))}
          </select>
        )}
      </Field>
      {warnings.map((sentence) => (
        <p key={sentence} className="hazard" role="note">
          {sentence}
        </p>
      ))}
    </fieldset>
  );
}
