import { MATERIAL_NAMES, MATERIALS, type Material } from '../../grading/materials';
import { texts } from '../../texts/speech';
import { materialChoices } from '../parts/materialChoices';
import { useSettings } from '../stores';

/** What the stones are: it sets the gloss that a perfect polish could reach, and what to beware of. */
export function MaterialChoice() {
  const material = useSettings((state) => state.material);
  const change = useSettings((state) => state.change);
  const words = texts().setup;
  const facts: Material | null = material === null ? null : MATERIALS[material];
  return (
    <div className="field">
      <label className="field-beside">
        <span className="field-label">{words.material}</span>
        <select
          value={material ?? ''}
          onChange={(event) =>
            change({ material: MATERIAL_NAMES.find((name) => name === event.target.value) ?? null })
          }
        >
          <option value="">{words.mixed}</option>
          {materialChoices().map(({ material: choice, word }) => (
            <option key={choice} value={choice}>
              {word}
            </option>
          ))}
        </select>
      </label>
      {facts?.hazard !== undefined && (
        <p className="hazard" role="note">
          {texts().verdicts.hazards[facts.hazard]}
        </p>
      )}
    </div>
  );
}
