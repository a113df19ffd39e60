import { type FormEvent, useState } from 'react';
import type { MaterialName } from '../../grading/materials';
import type { StoneRecord } from '../../journal/records';
import { texts } from '../../texts/speech';
import { Field } from '../parts/Field';
import { materialChoices } from '../parts/materialChoices';

interface Props {
  readonly stone: StoneRecord;
  readonly onSay: (change: Partial<StoneRecord>) => void;
}

/** Name, material and source of a stone. */
export function StoneForm({ stone, onSay }: Props) {
  const [said, setSaid] = useState<Pick<StoneRecord, 'name' | 'material' | 'source'>>(stone);
  const words = texts().journal.stone;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { name, material, source } = said;
    onSay({ name: name.trim() === '' ? stone.name : name.trim(), material, source: source.trim() });
  };
  return (
    <details className="said-more">
      <summary>{words.about}</summary>
      <form className="said" onSubmit={submit}>
        <Field label={words.name}>
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
        <Field label={words.material}>
          {(id) => (
            <select
              id={id}
              value={said.material ?? ''}
              onChange={(event) =>
                setSaid({ ...said, material: (event.target.value || null) as MaterialName | null })
              }
            >
              <option value="">{words.notSure}</option>
              {materialChoices().map(({ material, word }) => (
                <option key={material} value={material}>
                  {word}
                </option>
              ))}
            </select>
          )}
        </Field>
        <Field label={words.source}>
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
          {words.save}
        </button>
      </form>
    </details>
  );
}
