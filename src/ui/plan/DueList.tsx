import { Link } from 'wouter';
import type { Day, RecordId } from '../../journal/records';
import { type DueItem, dueList } from '../../recipes/dueList';
import type { UnderWay } from '../../recipes/underWay';
import { ownWords } from '../../texts/ownWords';
import { seenName } from '../../texts/seenName';
import { texts } from '../../texts/speech';
import { dayWords, inDaysWords } from './planWords';

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
  const words = texts().plan;
  const { overdue, today, soon, later } = dueList(checks, rest.today);
  if (checks.length === 0) return <p>{words.nothingDue}</p>;
  return (
    <>
      <DuePart title={words.overdue} items={overdue} isPressing {...rest} />
      <DuePart title={words.today} items={today} isPressing {...rest} />
      <DuePart title={words.soon} items={soon} {...rest} />
      <DuePart title={words.later} items={later} {...rest} />
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
              <span className="due-name">{ownWords(seenName(due.batchName))}</span>{' '}
              <span className="due-when">
                {inDaysWords(inDays)}
                {inDays !== 0 && <span className="fine"> {dayWords(due.day)}</span>}
              </span>{' '}
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
  const words = texts().plan;
  if (one === undefined) return words.noCharge;
  return words.turning(one.step, machineName(one.machine), one.day);
}
