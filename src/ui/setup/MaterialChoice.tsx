import { MATERIAL_NAMES, MATERIALS, type Material } from '../../grading/materials';
import { useSettings } from '../stores';

/** What the stones are: it sets the gloss that a perfect polish could reach, and what to beware of. */
export function MaterialChoice() {
  const material = useSettings((state) => state.material);
  const change = useSettings((state) => state.change);
  const facts: Material | null = material === null ? null : MATERIALS[material];
  return (
    <div className="field">
      <label className="field-beside">
        <span className="field-label">Material</span>
        <select
          value={material ?? ''}
          onChange={(event) =>
            change({ material: MATERIAL_NAMES.find((name) => name === event.target.value) ?? null })
          }
        >
          <option value="">mixed, or not sure</option>
          {MATERIAL_NAMES.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {facts?.hazard !== undefined && (
        <p className="hazard" role="note">
          {facts.hazard}
        </p>
      )}
    </div>
  );
}
