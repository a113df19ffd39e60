import { type FormEvent, useId, useState } from 'react';
import type { BatchRecord } from '../../journal/records';
import { useJournal } from '../stores';

interface Props {
  readonly batch: BatchRecord;
  readonly onSay: (change: Partial<BatchRecord>) => void;
}

/** Name, machine, start and end of a batch. */
export function BatchForm({ batch, onSay }: Props) {
  const machines = useJournal((state) => state.machines);
  const [said, setSaid] = useState<Pick<BatchRecord, 'name' | 'machine' | 'startedOn' | 'isOver'>>(batch);
  const ids = { name: useId(), machine: useId(), start: useId(), over: useId() };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const { name, machine, startedOn, isOver } = said;
    onSay({ name: name.trim() === '' ? batch.name : name.trim(), machine, startedOn, isOver });
  };
  return (
    <details className="said-more">
      <summary>About this batch</summary>
      <form className="said" onSubmit={submit}>
        <div className="field">
          <label className="field-label" htmlFor={ids.name}>
            Name of the batch
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
          <label className="field-label" htmlFor={ids.start}>
            In coarse since
          </label>
          <input
            id={ids.start}
            type="date"
            required
            value={said.startedOn}
            onChange={(event) => setSaid({ ...said, startedOn: event.target.value })}
          />
        </div>
        <div className="field">
          <label className="field-label" htmlFor={ids.machine}>
            Machine
          </label>
          <select
            id={ids.machine}
            value={said.machine ?? ''}
            onChange={(event) => setSaid({ ...said, machine: event.target.value || null })}
          >
            <option value="">not said</option>
            {machines.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </div>
        <label className="tick" htmlFor={ids.over}>
          <input
            id={ids.over}
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
