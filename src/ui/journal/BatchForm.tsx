import { type FormEvent, useId, useState } from 'react';
import type { BatchRecord } from '../../journal/records';
import { Field } from '../parts/Field';
import { MachineSelect } from './MachineSelect';

interface Props {
  readonly batch: BatchRecord;
  readonly onSay: (change: Partial<BatchRecord>) => void;
}

/** Name, machine, start and end of a batch. */
export function BatchForm({ batch, onSay }: Props) {
  const [said, setSaid] = useState<Pick<BatchRecord, 'name' | 'machine' | 'startedOn' | 'isOver'>>(batch);
  const overId = useId();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { name, machine, startedOn, isOver } = said;
    onSay({ name: name.trim() === '' ? batch.name : name.trim(), machine, startedOn, isOver });
  };
  return (
    <details className="said-more">
      <summary>About this batch</summary>
      <form className="said" onSubmit={submit}>
        <Field label="Name of the batch">
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
        <Field label="In coarse since">
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
        <MachineSelect machine={said.machine} onChoose={(machine) => setSaid({ ...said, machine })} />
        <label className="tick" htmlFor={overId}>
          <input
            id={overId}
            type="checkbox"
            checked={said.isOver}
            onChange={(event) => setSaid({ ...said, isOver: event.target.checked })}
          />
          It is over: finished, or given up
        </label>
        <button type="submit" className="button button-strong">
          Save
        </button>
      </form>
    </details>
  );
}
