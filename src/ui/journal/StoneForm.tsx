import { type FormEvent, useState } from 'react';
import { MATERIAL_NAMES, type MaterialName } from '../../grading/materials';
import type { StoneRecord } from '../../journal/records';
import { Field } from '../parts/Field';

interface Props {
  readonly stone: StoneRecord;
  readonly onSay: (change: Partial<StoneRecord>) => void;
}

/** Name, material and source of a stone. */
export function StoneForm({ stone, onSay }: Props) {
  const [said, setSaid] = useState<Pick<StoneRecord, 'name' | 'material' | 'source'>>(stone);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { name, material, source } = said;
    onSay({ name: name.trim() === '' ? stone.name : name.trim(), material, source: source.trim() });
  };
  return (
    <details className="said-more">
      <summary>About this stone</summary>
      <form className="said" onSubmit={submit}>
        <Field label="Name or number">
          {(id) => (
            <input
              id={id}
              type="text"
              maxLength={60}
              value={said.name}
              onChange={(event) => setSaid({ ...said, name: event.target.value })}
            />
          )}
        </Field>
        <Field label="Material">
          {(id) => (
            <select
              id={id}
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
          )}
        </Field>
        <Field label="Where it came from">
          {(id) => (
            <input
              id={id}
              type="text"
              maxLength={100}
              value={said.source}
              onChange={(event) => setSaid({ ...said, source: event.target.value })}
            />
          )}
        </Field>
        <button type="submit" className="button button-strong">
          Save
        </button>
      </form>
    </details>
  );
}
