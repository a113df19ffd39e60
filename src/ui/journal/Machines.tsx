import { type FormEvent, useState } from 'react';
import type { MachineRecord } from '../../journal/records';
import type { Saying } from '../../state/saidAnew';
import { Field } from '../parts/Field';
import { useJournal } from '../stores';

/** The owner's machines, and room for one more. */
export function Machines() {
  const { machines, say } = useJournal((state) => state);
  const [isAdding, setAdding] = useState(false);
  return (
    <section className="machines" aria-labelledby="machines-title">
      <h3 id="machines-title">Machines</h3>
      <ul>
        {machines.map(({ id, name, type, capacityKg }) => (
          <li key={id}>
            <strong>{name}</strong>, {type}
            {capacityKg !== null && `, ${capacityKg} kg`}
          </li>
        ))}
      </ul>
      {isAdding ? (
        <MachineForm
          onAdd={async (machine) => {
            if (await say([machine])) setAdding(false);
          }}
        />
      ) : (
        <button type="button" className="button" onClick={() => setAdding(true)}>
          Add a machine
        </button>
      )}
    </section>
  );
}

function MachineForm({ onAdd }: { onAdd: (machine: Saying<MachineRecord>) => void }) {
  const [name, setName] = useState('');
  const [type, setType] = useState<MachineRecord['type']>('rotary');
  const [kg, setKg] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const capacity = Number(kg);
    onAdd({
      kind: 'machine',
      name: name.trim(),
      type,
      capacityKg: kg.trim() !== '' && capacity > 0 ? capacity : null,
    });
  };
  return (
    <form className="said" onSubmit={submit}>
      <Field label="Name">
        {(id) => (
          <input
            id={id}
            type="text"
            required
            maxLength={60}
            value={name}
            onChange={(event) => setName(event.target.value)}
          />
        )}
      </Field>
      <Field label="Kind">
        {(id) => (
          <select
            id={id}
            value={type}
            onChange={(event) => setType(event.target.value as MachineRecord['type'])}
          >
            <option value="rotary">rotary barrel</option>
            <option value="vibratory">vibratory bowl</option>
          </select>
        )}
      </Field>
      <Field label="Holds, kg (may stay empty)">
        {(id) => (
          <input
            id={id}
            type="number"
            inputMode="decimal"
            min="0"
            step="any"
            value={kg}
            onChange={(event) => setKg(event.target.value)}
          />
        )}
      </Field>
      <button type="submit" className="button button-strong">
        Add
      </button>
    </form>
  );
}
