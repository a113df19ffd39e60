import { type FormEvent, useState } from 'react';
import { STEP_FACTS, STEPS, type Step } from '../../grading/steps';
import type { BatchRecord, RunRecord } from '../../journal/records';
import { type Saying, saidAnew } from '../../state/saidAnew';
import { Field } from '../parts/Field';
import { useJournal } from '../stores';
import { dayToday } from './dayToday';
import { MachineSelect } from './MachineSelect';

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
  const [step, setStep] = useState<Step>('coarse');
  const [charge, setCharge] = useState<string | null>(null);
  const [machine, setMachine] = useState(batch.machine);
  const [startedOn, setStartedOn] = useState(dayToday());
  const usual = `${STEP_FACTS[step].grit}: ${STEP_FACTS[step].charge}`;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    onAdd({
      kind: 'run',
      batch: batch.id,
      machine,
      step,
      startedOn,
      endedOn: null,
      charge: (charge ?? usual).trim(),
    });
  };
  return (
    <form className="said" onSubmit={submit}>
      <Field label="Step">
        {(id) => (
          <select id={id} value={step} onChange={(event) => setStep(event.target.value as Step)}>
            {STEPS.map((one) => (
              <option key={one} value={one}>
                {STEP_FACTS[one].title}
              </option>
            ))}
          </select>
        )}
      </Field>
      <MachineSelect machine={machine} onChoose={setMachine} />
      <Field label="Charge (filled in: common practice)">
        {(id) => (
          <textarea
            id={id}
            rows={3}
            maxLength={300}
            value={charge ?? usual}
            onChange={(event) => setCharge(event.target.value)}
          />
        )}
      </Field>
      <Field label="Started">
        {(id) => (
          <input
            id={id}
            type="date"
            required
            value={startedOn}
            onChange={(event) => setStartedOn(event.target.value)}
          />
        )}
      </Field>
      <button type="submit" className="button button-strong">
        Add the run
      </button>
    </form>
  );
}
