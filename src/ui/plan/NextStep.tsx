import { useId, useState } from 'react';
import type { BatchHistory } from '../../history/batchHistory';
import type { Day, MachineRecord, RunRecord } from '../../journal/records';
import { hardnessMismatch, hazardsOf } from '../../recipes/hardness';
import { machineFor, type NextGroup, nextGroups } from '../../recipes/nextGroups';
import { recipeFor } from '../../recipes/ownRecipes';
import type { PlanSettings } from '../../recipes/planSettings';
import { runEndedBy, runOf, runOfGroup } from '../../recipes/startRun';
import type { Units } from '../../recipes/units';
import { isOf, isWashedOut, type WashOutEvent, washOutAfter } from '../../recipes/washOut';
import { ownWords } from '../../texts/ownWords';
import { texts } from '../../texts/speech';
import { useSpeech } from '../useSpeech';
import { GroupFilling } from './GroupFilling';
import { dayWords, mismatchWords } from './planWords';
import { RecipeCard } from './RecipeCard';
import { WashOut } from './WashOut';

export interface NextStepProps {
  readonly history: BatchHistory;
  readonly machines: readonly MachineRecord[];
  readonly today: Day;
  readonly units: Units;
  readonly settings: PlanSettings;
  readonly onChange: (part: Partial<PlanSettings>) => void;
  /** Starts a run, and ends the one that it takes the place of. */
  readonly onStart: (run: Omit<RunRecord, 'id'>, ended: RunRecord | null) => void;
}

/** What to do next with a batch's stones: one part for each step they go to, with wash-out, filling and recipe. */
export function NextStep(props: NextStepProps) {
  const words = useSpeech().texts.plan;
  const groups = nextGroups(props.history);
  if (groups.length === 0) return null;
  return (
    <section aria-labelledby="next-title" className="next-step">
      <h3 id="next-title">{words.next}</h3>
      <div className="next-groups">
        {groups.map((group) => (
          <Group key={group.step} group={group} groups={groups} {...props} />
        ))}
      </div>
    </section>
  );
}

interface GroupProps extends NextStepProps {
  readonly group: NextGroup;
  readonly groups: readonly NextGroup[];
}

function Group(props: GroupProps) {
  const words = texts().plan;
  const { group, history, machines, units, settings, onChange } = props;
  const [chosen, setChosen] = useState<string | null>(null);
  const turning = runOfGroup(history, group);
  const machine =
    machines.find(({ id }) => id === (chosen ?? turning?.machine)) ??
    machineFor(history, group.step, machines);
  const mine = { batch: history.batch.id, from: group.from, to: group.step };
  return (
    <div className="next-group">
      <GroupFilling group={group} machine={machine} isTurning={turning !== null} units={units} />
      <GroupCautions materials={group.materials} />
      {turning !== null && <p>{words.goesOn(dayWords(turning.startedOn), ownWords(turning.charge))}</p>}
      {turning === null && group.needsWashOut && (
        <GroupWashOut mine={mine} settings={settings} onChange={onChange} />
      )}
      {turning === null && !group.needsWashOut && (
        <p className="hazard">{texts().verdicts.cautions.slurry}</p>
      )}
      {turning === null && <MachineChoice machines={machines} machine={machine} onChoose={setChosen} />}
      <RecipeCard
        key={`${machine?.id} ${units.amount}`}
        step={group.step}
        machine={machine}
        units={units}
        own={settings.recipes}
        onOwn={(recipes) => onChange({ recipes })}
      />
      {turning === null && machine !== null && <StartButton machine={machine} mine={mine} {...props} />}
    </div>
  );
}

/** What is to be minded of these very stones. */
function GroupCautions({ materials }: Pick<NextGroup, 'materials'>) {
  const mismatch = hardnessMismatch(materials);
  const sentences = [...hazardsOf(materials), ...(mismatch === null ? [] : [mismatchWords(mismatch)])];
  return sentences.map((sentence) => (
    <p key={sentence} className="hazard">
      {sentence}
    </p>
  ));
}

interface StartButtonProps extends GroupProps {
  readonly machine: MachineRecord;
  readonly mine: Parameters<typeof isOf>[1];
}

/** Starts the group's run; strong once the wash-out is done, and never refused. */
function StartButton({ group, groups, history, machine, mine, ...props }: StartButtonProps) {
  const words = texts().plan;
  const { today, settings, onChange, onStart } = props;
  const { washOut, recipes } = settings;
  const isMine = washOut !== null && isOf(washOut, mine);
  const isWashed = !group.needsWashOut || (isMine && isWashedOut(washOut));
  const ended = runEndedBy(history, group, groups);
  const start = () => {
    onStart(runOf(history.batch.id, machine, recipeFor(machine, group.step, recipes), today), ended);
    if (isMine) onChange({ washOut: null });
  };
  return (
    <>
      {!isWashed && <p className="hazard">{words.washFirst}</p>}
      <button type="button" className={`button ${isWashed ? 'button-strong' : ''}`} onClick={start}>
        {ended?.step === group.step ? words.recharge : words.start}
      </button>
    </>
  );
}

interface GroupWashOutProps extends Pick<NextStepProps, 'settings' | 'onChange'> {
  readonly mine: Parameters<typeof isOf>[1];
}

function GroupWashOut({ mine, settings, onChange }: GroupWashOutProps) {
  const words = texts().plan;
  const { washOut } = settings;
  const [isBegun, setBegun] = useState(false);
  const onEvent = (event: WashOutEvent) => onChange({ washOut: washOutAfter(washOut, event) });
  if (washOut !== null && isOf(washOut, mine)) {
    return <WashOut washOut={washOut} onEvent={onEvent} takesFocus={isBegun} />;
  }
  const begin = () => {
    setBegun(true);
    onEvent({ type: 'begin', ...mine });
  };
  return (
    <div className="wash-out">
      <p>
        <strong>{words.washOut}.</strong> {words.washOutWhy}
      </p>
      <button type="button" className="button" onClick={begin}>
        {words.washOutBegin}
      </button>
    </div>
  );
}

interface MachineChoiceProps {
  readonly machines: readonly MachineRecord[];
  readonly machine: MachineRecord | null;
  readonly onChoose: (machine: string) => void;
}

function MachineChoice({ machines, machine, onChoose }: MachineChoiceProps) {
  const id = useId();
  if (machines.length < 2) return null;
  return (
    <div className="field-beside">
      <label className="field-label" htmlFor={id}>
        {texts().plan.machine}
      </label>
      <select id={id} value={machine?.id ?? ''} onChange={(event) => onChoose(event.target.value)}>
        {machines.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
    </div>
  );
}
