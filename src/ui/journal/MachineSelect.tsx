import type { RecordId } from '../../journal/records';
import { texts } from '../../texts/speech';
import { Field } from '../parts/Field';
import { useJournal } from '../stores';

interface Props {
  readonly machine: RecordId | null;
  readonly onChoose: (machine: RecordId | null) => void;
}

/** One of the owner's machines, or none. */
export function MachineSelect({ machine, onChoose }: Props) {
  const machines = useJournal((state) => state.machines);
  const words = texts().journal.machines;
  return (
    <Field label={words.machine}>
      {(id) => (
        <select id={id} value={machine ?? ''} onChange={({ target }) => onChoose(target.value || null)}>
          <option value="">{words.notSaid}</option>
          {machines.map((known) => (
            <option key={known.id} value={known.id}>
              {known.name}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
