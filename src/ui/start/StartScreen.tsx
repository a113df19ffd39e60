import { type FormEvent, useState } from 'react';
import { useLocation } from 'wouter';
import type { MaterialName } from '../../grading/materials';
import { STEPS, type Step } from '../../grading/steps';
import type { MachineRecord, RecordId } from '../../journal/records';
import { recipeFor } from '../../recipes/ownRecipes';
import { runOf } from '../../recipes/startRun';
import { dayToday } from '../../state/dayToday';
import { troubleWords } from '../../state/journalTrouble';
import { MachineForm } from '../journal/MachineForm';
import { MachineSelect } from '../journal/MachineSelect';
import { Field } from '../parts/Field';
import { RecipeCard } from '../plan/RecipeCard';
import { useJournal, useSettings } from '../stores';
import { useSpeech } from '../useSpeech';
import { BatchMaterials } from './BatchMaterials';

/** Starts a batch: what the stones are, where they come from, the machine and what goes in. */
export function StartScreen() {
  const { start: words, verdicts } = useSpeech().texts;
  const { machines, trouble, begin } = useJournal((state) => state);
  const { plan, units, change } = useSettings((state) => state);
  const [, go] = useLocation();
  const [name, setName] = useState('');
  const [materials, setMaterials] = useState<readonly MaterialName[]>([]);
  const [source, setSource] = useState('');
  const [chosen, setChosen] = useState<RecordId | null | undefined>(undefined);
  const [step, setStep] = useState<Step>('coarse');
  const machine = chosenMachine(machines, chosen);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    const day = dayToday();
    const run = machine && runOf('', machine, recipeFor(machine, step, plan.recipes), day);
    const said = { name: name.trim(), materials, source: source.trim(), machine: machine?.id ?? null };
    const batch = await begin({ ...said, day, run });
    if (batch !== null) go(`/journal/${batch}`);
  };
  return (
    <div className="start">
      <h2>{words.title}</h2>
      <p>{words.lead}</p>
      <form id="start-batch" className="said start-part" onSubmit={submit}>
        <Field label={words.name}>
          {(id) => (
            <input
              id={id}
              type="text"
              required
              pattern=".*\S.*"
              maxLength={60}
              value={name}
              placeholder={words.nameHint}
              onChange={({ target }) => setName(target.value)}
            />
          )}
        </Field>
        <BatchMaterials materials={materials} onChange={setMaterials} />
        <Field label={words.source}>
          {(id) => (
            <input
              id={id}
              type="text"
              maxLength={120}
              value={source}
              aria-describedby={`${id}-hint`}
              onChange={({ target }) => setSource(target.value)}
            />
          )}
        </Field>
        <p className="fine">{words.sourceHint}</p>
      </form>
      <section className="start-part" aria-labelledby="start-machine">
        <h3 id="start-machine">{words.machine}</h3>
        <MachinePart machine={machine?.id ?? null} onChoose={setChosen} />
      </section>
      <section className="start-part" aria-labelledby="start-recipe">
        <h3 id="start-recipe">{words.recipe}</h3>
        <Field label={words.step}>
          {(id) => (
            <select id={id} value={step} onChange={({ target }) => setStep(target.value as Step)}>
              {STEPS.map((one) => (
                <option key={one} value={one}>
                  {verdicts.steps[one]}
                </option>
              ))}
            </select>
          )}
        </Field>
        <RecipeCard
          key={`${machine?.id} ${step} ${units.amount}`}
          {...{ step, machine, units }}
          own={plan.recipes}
          onOwn={(recipes) => change({ plan: { ...plan, recipes } })}
        />
        <p className="hazard">{verdicts.cautions.dust}</p>
        <p className="hazard">{verdicts.cautions.slurry}</p>
      </section>
      {trouble !== null && <p role="alert">{troubleWords(trouble)}</p>}
      <button type="submit" form="start-batch" className="button button-strong">
        {words.begin}
      </button>
      <p className="fine">{words.next}</p>
    </div>
  );
}

/** The machine chosen; before that the only one there is. */
function chosenMachine(
  machines: readonly MachineRecord[],
  chosen: RecordId | null | undefined,
): MachineRecord | null {
  if (chosen === undefined) return machines.length === 1 ? (machines[0] ?? null) : null;
  return machines.find(({ id }) => id === chosen) ?? null;
}

function MachinePart({
  machine,
  onChoose,
}: {
  machine: RecordId | null;
  onChoose: (machine: RecordId | null) => void;
}) {
  const words = useSpeech().texts.start;
  const machines = useJournal((state) => state.machines);
  const say = useJournal((state) => state.say);
  const [isAdding, setAdding] = useState(false);
  const add = async (said: Parameters<typeof say>[0][number]) => {
    if (await say([said])) setAdding(false);
  };
  const isForm = isAdding || machines.length === 0;
  return (
    <>
      {machines.length > 0 && <MachineSelect machine={machine} onChoose={onChoose} />}
      {isForm ? (
        <MachineForm onAdd={add} />
      ) : (
        <button type="button" className="button button-quiet" onClick={() => setAdding(true)}>
          {words.newMachine}
        </button>
      )}
    </>
  );
}
