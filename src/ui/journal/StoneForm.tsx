import { type FormEvent, useId, useState } from 'react';
import { MATERIAL_NAMES, type MaterialName } from '../../grading/materials';
import type { StoneRecord } from '../../journal/records';

interface Props {
  readonly stone: StoneRecord;
  readonly onSay: (change: Partial<StoneRecord>) => void;
}

/** Name, material and source of a stone. */
export function StoneForm({ stone, onSay }: Props) {
  const [said, setSaid] = useState<Pick<StoneRecord, 'name' | 'material' | 'source'>>(stone);
  const ids = { name: useId(), material: useId(), source: useId() };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { name, material, source } = said;
    onSay({ name: name.trim() === '' ? stone.name : name.trim(), material, source: source.trim() });
  };
  return (
    <details className="said-more">
      <summary>About this stone</summary>
      <form className="said" onSubmit={submit}>
        <div className="field">
          <label className="field-label" htmlFor={ids.name}>
            Name or number
          </label>
          <input
            id={ids.name}
            type="text"
            maxLength={60}
            value={said.name}
            onChange={(event) => setSaid({ ...said, name: event.target.value })}
          />
        </div>
        <div className="field">
          <label className="field-label" htmlFor={ids.material}>
            Material
          </label>
          <select
            id={ids.material}
            value={said.material ?? ''}
            onChange={(event) =>
              setSaid({ ...said, material: (event.target.value || null) as MaterialName | null })
            }
          >
            <option value="">not sure</option>
            {MATERIAL_NAMES.map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        </div>
        <div className="field">
          <label className="field-label" htmlFor={ids.source}>
            Where it came from
          </label>
          <input
            id={ids.source}
            type="text"
            maxLength={100}
            value={said.source}
            onChange={(event) => setSaid({ ...said, source: event.target.value })}
          />
        </div>
        <button type="submit" className="button button-strong">
          Save
        </button>
      </form>
    </details>
  );
}
