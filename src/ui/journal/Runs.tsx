import { type FormEvent, useState } from 'react';
import { STEPS, type Step } from '../../grading/steps';
import type { BatchRecord, RunRecord } from '../../journal/records';
import { dayToday } from '../../state/dayToday';
import { type Saying, saidAnew } from '../../state/saidAnew';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { Field } from '../parts/Field';
import { useJournal, useUndo } from '../stores';
import { MachineSelect } from './MachineSelect';

/** What the batch was run through: step, machine, charge and days. */
export function Runs({ batch, runs }: { batch: BatchRecord; runs: readonly RunRecord[] }) {
  const { say } = useJournal((state) => state);
  const words = texts().journal.runs;
  const [isAdding, setAdding] = useState(false);
  return (
    <section aria-labelledby="runs-title" className="runs">
      <h3 id="runs-title">{words.title}</h3>
      <ol>
        {runs.map((run) => (
          <RunRow key={run.id} run={run} />
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
          {words.start}
        </button>
      )}
    </section>
  );
}

/** A run, with the ways to end it and to take it out; both can be undone. */
function RunRow({ run }: { run: RunRecord }) {
  const { machines, say, withdraw } = useJournal((state) => state);
  const { done } = useUndo();
  const { journal, verdicts } = texts();
  const words = journal.runs;
  const end = async () => {
    if ((await say([saidAnew(run, { endedOn: dayToday() })])) === null) return;
    done({ said: () => texts().journal.runs.endedUndo, undo: () => void say([saidAnew(run, {})]) });
  };
  const takeOut = async () => {
    if (!(await withdraw(run.batch, [run.id], true))) return;
    const undo = () => void withdraw(run.batch, [run.id], false);
    done({ said: () => texts().journal.runs.takenOut, undo });
  };
  return (
    <li className="run">
      <p>
        <strong>{verdicts.steps[run.step]}</strong> {words.days(run.startedOn, run.endedOn)}
        {run.machine !== null &&
          `, ${ownWords(machines.find(({ id }) => id === run.machine)?.name ?? journal.machines.unknown)}`}
      </p>
      {run.charge !== '' && <p className="fine">{run.charge}</p>}
      <p className="row-ways">
        {run.endedOn === null && (
          <button type="button" className="button" onClick={end}>
            {words.washedOut}
          </button>
        )}
        <button type="button" className="button button-quiet" onClick={takeOut}>
          {words.takeOut}
        </button>
      </p>
    </li>
  );
}

function RunForm({ batch, onAdd }: { batch: BatchRecord; onAdd: (run: Saying<RunRecord>) => void }) {
  const { journal, verdicts } = texts();
  const words = journal.runs;
  const [step, setStep] = useState<Step>('coarse');
  const [charge, setCharge] = useState<string | null>(null);
  const [machine, setMachine] = useState(batch.machine);
  const [startedOn, setStartedOn] = useState(dayToday());
  const usual = `${verdicts.grits[step]}: ${verdicts.charges[step]}`;
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
      <Field label={words.step}>
        {(id) => (
          <select id={id} value={step} onChange={(event) => setStep(event.target.value as Step)}>
            {STEPS.map((one) => (
              <option key={one} value={one}>
                {verdicts.steps[one]}
              </option>
            ))}
          </select>
        )}
      </Field>
      <MachineSelect machine={machine} onChoose={setMachine} />
      <Field label={words.charge}>
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
      <Field label={words.started}>
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
        {words.add}
      </button>
    </form>
  );
}
