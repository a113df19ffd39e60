import { Link } from 'wouter';
import { STEP_FACTS } from '../../grading/steps';
import type { Day, RecordId } from '../../journal/records';
import { type DueItem, dueList } from '../../recipes/dueList';
import type { UnderWay } from '../../recipes/underWay';
import { dayWords, inDaysWords, PLAN_WORDS } from './planWords';

/** A check that is due. */
export interface DueCheck {
  readonly batch: RecordId;
  readonly batchName: string;
  readonly day: Day;
}

interface DueListProps {
  readonly checks: readonly DueCheck[];
  readonly turning: readonly UnderWay[];
  readonly today: Day;
  readonly machineName: (machine: RecordId | null) => string | null;
}

/** Checks by day, the most pressing first. */
export function DueList({ checks, ...rest }: DueListProps) {
  const { overdue, today, soon, later } = dueList(checks, rest.today);
  if (checks.length === 0) return <p>{PLAN_WORDS.nothingDue}</p>;
  return (
    <>
      <DuePart title={PLAN_WORDS.overdue} items={overdue} isPressing {...rest} />
      <DuePart title={PLAN_WORDS.today} items={today} isPressing {...rest} />
      <DuePart title={PLAN_WORDS.soon} items={soon} {...rest} />
      <DuePart title={PLAN_WORDS.later} items={later} {...rest} />
    </>
  );
}

interface DuePartProps extends Omit<DueListProps, 'checks' | 'today'> {
  readonly title: string;
  readonly items: readonly DueItem<DueCheck>[];
  readonly isPressing?: boolean;
}

function DuePart({ title, items, isPressing = false, turning, machineName }: DuePartProps) {
  if (items.length === 0) return null;
  return (
    <section className="due-part" data-pressing={isPressing}>
      <h4>{title}</h4>
      <ul>
        {items.map(({ due, inDays }) => (
          <li key={due.batch}>
            <Link href={`/journal/${due.batch}`} className="due-row">
              <span className="due-name">{due.batchName}</span>
              <span className="due-when">
                {inDaysWords(inDays)}
                {inDays !== 0 && <span className="fine"> {dayWords(due.day)}</span>}
              </span>
              <span className="due-where fine">
                {whereWords(
                  turning.find(({ batch }) => batch === due.batch),
                  machineName,
                )}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** "Coarse in Barrel, day 6 since its charge". */
function whereWords(one: UnderWay | undefined, machineName: DueListProps['machineName']): string {
  if (one === undefined) return PLAN_WORDS.noCharge;
  const name = machineName(one.machine);
  const since = one.day === 0 ? 'charged today' : `day ${one.day} since its charge`;
  return `${STEP_FACTS[one.step].title}${name === null ? '' : ` in ${name}`}, ${since}`;
}
