import { type FormEvent, useId, useState } from 'react';
import { STEP_FACTS, STEPS, type Step } from '../../grading/steps';
import type { BatchRecord, RunRecord } from '../../journal/records';
import { type Saying, saidAnew } from '../../state/saidAnew';
import { useJournal } from '../stores';
import { dayToday } from './dayToday';

/** What the batch was run through: step, machine, charge and days. */
export function Runs({ batch, runs }: { batch: BatchRecord; runs: readonly RunRecord[] }) {
  const { machines, say } = useJournal((state) => state);
  const [isAdding, setAdding] = useState(false);
  return (
    <section aria-labelledby="runs-title" className="runs">
      <h3 id="runs-title">Runs</h3>
      <ol>
        {runs.map((run) => (
          <li key={run.id} className="run">
            <p>
              <strong>{STEP_FACTS[run.step].title}</strong> {run.startedOn} to {run.endedOn ?? 'now'}
              {run.machine !== null &&
                `, ${machines.find(({ id }) => id === run.machine)?.name ?? 'a machine'}`}
            </p>
            {run.charge !== '' && <p className="fine">{run.charge}</p>}
            {run.endedOn === null && (
              <button
                type="button"
                className="button"
                onClick={() => say([saidAnew(run, { endedOn: dayToday() })])}
              >
                Washed out today
              </button>
            )}
          </li>
        ))}
      </ol>
      {isAdding ? (
        <RunForm
          batch={batch}
          onAdd={async (run) => {
            if (await say([run])) setAdding(false);
          }}
        />
      ) : (
        <button type="button" className="button" onClick={() => setAdding(true)}>
          Start a run
        </button>
      )}
    </section>
  );
}

function RunForm({ batch, onAdd }: { batch: BatchRecord; onAdd: (run: Saying<RunRecord>) => void }) {
  const machines = useJournal((state) => state.machines);
  const [step, setStep] = useState<Step>('coarse');
  const [charge, setCharge] = useState<string | null>(null);
  const [machine, setMachine] = useState(batch.machine ?? '');
  const [startedOn, setStartedOn] = useState(dayToday());
  const ids = { step: useId(), charge: useId(), machine: useId(), day: useId() };
  const usual = `${STEP_FACTS[step].grit}: ${STEP_FACTS[step].charge}`;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    onAdd({
      kind: 'run',
      batch: batch.id,
      machine: machine === '' ? null : machine,
      step,
      startedOn,
      endedOn: null,
      charge: (charge ?? usual).trim(),
    });
  };
  return (
    <form className="said" onSubmit={submit}>
      <div className="field">
        <label className="field-label" htmlFor={ids.step}>
          Step
        </label>
        <select id={ids.step} value={step} onChange={(event) => setStep(event.target.value as Step)}>
          {STEPS.map((one) => (
            <option key={one} value={one}>
              {STEP_FACTS[one].title}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label className="field-label" htmlFor={ids.machine}>
          Machine
        </label>
        <select id={ids.machine} value={machine} onChange={(event) => setMachine(event.target.value)}>
          <option value="">not said</option>
          {machines.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label className="field-label" htmlFor={ids.charge}>
          Charge (filled in: common practice)
        </label>
        <textarea
          id={ids.charge}
          rows={3}
          maxLength={300}
          value={charge ?? usual}
          onChange={(event) => setCharge(event.target.value)}
        />
      </div>
      <div className="field">
        <label className="field-label" htmlFor={ids.day}>
          Started
        </label>
        <input
          id={ids.day}
          type="date"
          required
          value={startedOn}
          onChange={(event) => setStartedOn(event.target.value)}
        />
      </div>
      <button type="submit" className="button button-strong">
        Add the run
      </button>
    </form>
  );
}
