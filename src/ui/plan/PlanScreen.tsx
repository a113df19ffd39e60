import { useMemo } from 'react';
import { Link } from 'wouter';
import { nextCheck } from '../../bundle/nextCheck';
import type { BatchHistory } from '../../history/batchHistory';
import type { Day, MachineRecord, RecordId } from '../../journal/records';
import { chargesOf, gritOnHand } from '../../recipes/gritOnHand';
import { machineFor, nextGroups } from '../../recipes/nextGroups';
import type { PlanSettings } from '../../recipes/planSettings';
import { runOfGroup } from '../../recipes/startRun';
import { idleMachines, underWay } from '../../recipes/underWay';
import type { Units } from '../../recipes/units';
import { ownWords } from '../../texts/ownWords';
import { seenName } from '../../texts/seenName';
import { texts } from '../../texts/speech';
import { useSpeech } from '../useSpeech';
import { DueList } from './DueList';
import { GritOnHand } from './GritOnHand';
import { GroupFilling } from './GroupFilling';
import { dayWords } from './planWords';

export interface PlanScreenProps {
  /** All batches: those that are over still used grit. */
  readonly batches: readonly BatchHistory[];
  readonly machines: readonly MachineRecord[];
  readonly today: Day;
  readonly units: Units;
  readonly settings: PlanSettings;
  readonly onChange: (part: Partial<PlanSettings>) => void;
  /** Writes the checks that are due into a calendar file; no button without it. */
  readonly onCalendar?: () => void;
}

/** What is due, how full the machines are, and what grit is left. */
export function PlanScreen(props: PlanScreenProps) {
  const words = useSpeech().texts.plan;
  const { machines, today, units, settings, onChange } = props;
  const batches = props.batches.filter(({ batch }) => !batch.isOver);
  const onHand = useMemo(() => {
    const charges = props.batches.flatMap((one) => chargesOf(one, machines, settings.recipes));
    return gritOnHand(settings.stock, charges, machines, settings.recipes);
  }, [props.batches, machines, settings.recipes, settings.stock]);
  return (
    <div className="journal plan">
      <h2>{words.title}</h2>
      <DuePanel {...props} batches={batches} />
      <FillingPanel batches={batches} machines={machines} units={units} />
      <section aria-labelledby="grit-title" className="plan-panel">
        <h3 id="grit-title">{words.grit}</h3>
        <GritOnHand
          onHand={onHand}
          stock={settings.stock}
          today={today}
          units={units}
          onStock={(stock) => onChange({ stock })}
        />
      </section>
    </div>
  );
}

/** A machine's name as it stands in a sentence; null for one that was not said. */
function nameOf(machines: readonly MachineRecord[], machine: RecordId | null): string | null {
  const name = machines.find(({ id }) => id === machine)?.name;
  return name === undefined ? null : ownWords(name);
}

function DuePanel({ batches, machines, today, onCalendar }: PlanScreenProps) {
  const words = texts().plan;
  const turning = underWay(batches, today);
  const checks = batches.flatMap((history) => nextCheck(history, machines) ?? []);
  const unknown = batches.filter(({ batch }) => checks.every((check) => check.batch !== batch.id));
  const idle = idleMachines(machines, turning);
  return (
    <section aria-labelledby="due-title" className="plan-panel plan-due">
      <h3 id="due-title">{words.due}</h3>
      <DueList checks={checks} turning={turning} today={today} machineName={(id) => nameOf(machines, id)} />
      {idle.length > 0 && (
        <p>
          <strong>{words.free}</strong> {idle.map(({ name }) => ownWords(name)).join(', ')}
        </p>
      )}
      {unknown.length > 0 && (
        <p>
          {words.unknownBatches}{' '}
          {unknown.map(({ batch }, i) => (
            <span key={batch.id}>
              {i > 0 && ', '}
              <Link href={`/journal/${batch.id}`}>{seenName(batch.name)}</Link>
            </span>
          ))}
          .
        </p>
      )}
      {onCalendar !== undefined && checks.length > 0 && (
        <button type="button" className="button" onClick={onCalendar}>
          {words.calendar}
        </button>
      )}
    </section>
  );
}

function FillingPanel({ batches, machines, units }: Pick<PlanScreenProps, 'batches' | 'machines' | 'units'>) {
  const words = texts().plan;
  const checked = batches
    .map((history) => ({ history, groups: nextGroups(history) }))
    .filter(({ groups }) => groups.length > 0);
  return (
    <section aria-labelledby="filling-title" className="plan-panel">
      <h3 id="filling-title">{words.filling}</h3>
      {checked.length === 0 && <p>{words.fillingEmpty}</p>}
      {checked.map(({ history, groups }) => (
        <div key={history.batch.id} className="filling-batch">
          <p>
            <Link href={`/journal/${history.batch.id}`}>{seenName(history.batch.name)}</Link>{' '}
            <span className="fine">{words.afterCheck(dayWords(history.checks.at(-1)!.check.day))}</span>
          </p>
          {groups.map((group) => (
            <GroupFilling
              key={group.step}
              group={group}
              machine={machineFor(history, group.step, machines)}
              isTurning={runOfGroup(history, group) !== null}
              units={units}
            />
          ))}
        </div>
      ))}
      {checked.length > 0 && <p className="fine plan-how">{words.fillingHow}</p>}
    </section>
  );
}
