import { useMemo } from 'react';
import { Link } from 'wouter';
import { nextCheck } from '../../bundle/nextCheck';
import type { BatchHistory } from '../../history/batchHistory';
import type { Day, MachineRecord } from '../../journal/records';
import { chargesOf, gritOnHand } from '../../recipes/gritOnHand';
import { machineFor, nextGroups } from '../../recipes/nextGroups';
import type { PlanSettings } from '../../recipes/planSettings';
import { runOfGroup } from '../../recipes/startRun';
import { idleMachines, underWay } from '../../recipes/underWay';
import type { Units } from '../../recipes/units';
import { DueList } from './DueList';
import { GritOnHand } from './GritOnHand';
import { GroupFilling } from './GroupFilling';
import { dayWords, PLAN_WORDS } from './planWords';

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
  const { machines, today, units, settings, onChange } = props;
  const batches = props.batches.filter(({ batch }) => !batch.isOver);
  const onHand = useMemo(() => {
    const charges = props.batches.flatMap((one) => chargesOf(one, machines, settings.recipes));
    return gritOnHand(settings.stock, charges, machines, settings.recipes);
  }, [props.batches, machines, settings.recipes, settings.stock]);
  return (
    <div className="journal plan">
      <h2>{PLAN_WORDS.plan}</h2>
      <DuePanel {...props} batches={batches} />
      <FillingPanel batches={batches} machines={machines} units={units} />
      <section aria-labelledby="grit-title" className="plan-panel">
        <h3 id="grit-title">{PLAN_WORDS.grit}</h3>
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

function DuePanel({ batches, machines, today, onCalendar }: PlanScreenProps) {
  const turning = underWay(batches, today);
  const checks = batches.flatMap((history) => nextCheck(history, machines) ?? []);
  const unknown = batches.filter(({ batch }) => checks.every((check) => check.batch !== batch.id));
  const idle = idleMachines(machines, turning);
  return (
    <section aria-labelledby="due-title" className="plan-panel plan-due">
      <h3 id="due-title">{PLAN_WORDS.due}</h3>
      <DueList
        checks={checks}
        turning={turning}
        today={today}
        machineName={(id) => machines.find((machine) => machine.id === id)?.name ?? null}
      />
      {idle.length > 0 && (
        <p>
          <strong>{PLAN_WORDS.free}:</strong> {idle.map(({ name }) => name).join(', ')}
        </p>
      )}
      {unknown.length > 0 && (
        <p>
          {PLAN_WORDS.unknownBatches}{' '}
          {unknown.map(({ batch }, i) => (
            <span key={batch.id}>
              {i > 0 && ', '}
              <Link href={`/journal/${batch.id}`}>{batch.name}</Link>
            </span>
          ))}
          .
        </p>
      )}
      {onCalendar !== undefined && checks.length > 0 && (
        <button type="button" className="button" onClick={onCalendar}>
          {PLAN_WORDS.calendar}
        </button>
      )}
    </section>
  );
}

function FillingPanel({ batches, machines, units }: Pick<PlanScreenProps, 'batches' | 'machines' | 'units'>) {
  const checked = batches
    .map((history) => ({ history, groups: nextGroups(history) }))
    .filter(({ groups }) => groups.length > 0);
  return (
    <section aria-labelledby="filling-title" className="plan-panel">
      <h3 id="filling-title">{PLAN_WORDS.filling}</h3>
      {checked.length === 0 && <p>{PLAN_WORDS.fillingEmpty}</p>}
      {checked.map(({ history, groups }) => (
        <div key={history.batch.id} className="filling-batch">
          <p>
            <Link href={`/journal/${history.batch.id}`}>{history.batch.name}</Link>{' '}
            <span className="fine">after the check on {dayWords(history.checks.at(-1)!.check.day)}</span>
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
      {checked.length > 0 && (
        <p className="fine plan-how">
          {PLAN_WORDS.fillHardness} {PLAN_WORDS.fillingHow}
        </p>
      )}
    </section>
  );
}
