import { type FormEvent, useState } from 'react';
import type { MachineRecord } from '../../journal/records';
import { KG_PER_LB } from '../../recipes/spoons';
import type { Saying } from '../../state/saidAnew';
import { texts } from '../../texts/speech';
import { typedNumber } from '../../texts/typedNumber';
import { Field } from '../parts/Field';
import { NumberInput } from '../parts/NumberInput';
import { useSettings } from '../stores';

/** A machine's name, kind and load. */
export function MachineForm({ onAdd }: { onAdd: (machine: Saying<MachineRecord>) => void }) {
  const { weight } = useSettings((state) => state.units);
  const { machines: words, machineKinds } = texts().journal;
  const [name, setName] = useState('');
  const [type, setType] = useState<MachineRecord['type']>('rotary');
  const [typed, setTyped] = useState('');
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const capacityKg = (typedNumber(typed) ?? 0) * (weight === 'kg' ? 1 : KG_PER_LB);
    onAdd({
      kind: 'machine',
      name: name.trim(),
      type,
      capacityKg: capacityKg > 0 ? capacityKg : null,
    });
  };
  return (
    <form className="said" onSubmit={submit}>
      <Field label={words.name}>
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
      <Field label={words.kind}>
        {(id) => (
          <select
            id={id}
            value={type}
            onChange={(event) => setType(event.target.value as MachineRecord['type'])}
          >
            <option value="rotary">{machineKinds.rotary}</option>
            <option value="vibratory">{machineKinds.vibratory}</option>
          </select>
        )}
      </Field>
      <Field label={words.holds(weight)}>
        {(id) => <NumberInput id={id} value={typed} onValue={setTyped} />}
      </Field>
      <button type="submit" className="button button-strong">
        {words.addThis}
      </button>
    </form>
  );
}
