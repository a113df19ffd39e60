import { type FormEvent, useId, useState } from 'react';
import type { BatchRecord } from '../../journal/records';
import { texts } from '../../texts/speech';
import { Field } from '../parts/Field';
import { BatchMaterials } from '../start/BatchMaterials';
import { MachineSelect } from './MachineSelect';

interface Props {
  readonly batch: BatchRecord;
  readonly onSay: (change: Partial<BatchRecord>) => void;
}

const pickSaid = ({ name, materials, source, machine, startedOn, isOver }: BatchRecord) => ({
  ...{ name, materials, source, machine, startedOn, isOver },
});

/** Name, stones, machine, start and end of a batch. */
export function BatchForm({ batch, onSay }: Props) {
  const [said, setSaid] = useState(pickSaid(batch));
  const overId = useId();
  const words = texts().journal.batch;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { name, ...rest } = said;
    onSay({ ...rest, name: name.trim() === '' ? batch.name : name.trim() });
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
        <Field label={words.inCoarseSince}>
          {(id) => (
            <input
              id={id}
              type="date"
              required
              value={said.startedOn}
              onChange={(event) => setSaid({ ...said, startedOn: event.target.value })}
            />
          )}
        </Field>
        <BatchMaterials
          materials={said.materials}
          onChange={(materials) => setSaid({ ...said, materials })}
        />
        <Field label={texts().start.source}>
          {(id) => (
            <input
              id={id}
              type="text"
              maxLength={120}
              value={said.source}
              onChange={(event) => setSaid({ ...said, source: event.target.value })}
            />
          )}
        </Field>
        <MachineSelect machine={said.machine} onChoose={(machine) => setSaid({ ...said, machine })} />
        <label className="tick" htmlFor={overId}>
          <input
            id={overId}
            type="checkbox"
            checked={said.isOver}
            onChange={(event) => setSaid({ ...said, isOver: event.target.checked })}
          />
          {words.isOver}
        </label>
        <button type="submit" className="button button-strong">
          {words.save}
        </button>
      </form>
    </details>
  );
}
